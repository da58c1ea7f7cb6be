package freshfurrow.solver.relaxation;

import java.util.ArrayList;
import java.util.List;

/** The days of a season in blocks one after the other: the fewer, the more there is to say of each. */
record DayBlocks(List<DaySpans.Span> spans) {
    private static final int MOST_BLOCKS = 32;
    private static final int MOST_VARIABLES = 500;

    DayBlocks {
        spans = List.copyOf(spans);
    }

    /** @param variables for each block */
    static DayBlocks of(int days, int variables) {
        int most = Math.max(1, Math.min(MOST_BLOCKS, MOST_VARIABLES / Math.max(1, variables)));
        int blocks = Math.min(days, most);
        List<DaySpans.Span> spans = new ArrayList<>();
        for (int b = 0; b < blocks; b++) {
            spans.add(new DaySpans.Span(b * days / blocks, (b + 1) * days / blocks - 1));
        }
        return new DayBlocks(spans);
    }

    int count() {
        return spans.size();
    }

    DaySpans.Span get(int block) {
        return spans.get(block);
    }
}
