package freshfurrow.model.weather;

import java.util.ArrayList;
import java.util.List;

/** Years in words: runs of years by their ends. */
public final class YearSpans {
    private YearSpans() {}

    /** Like "1995 to 2003, 2005", for years in order. */
    public static String words(List<Integer> years) {
        List<String> spans = new ArrayList<>();
        int begin = 0;
        for (int i = 1; i <= years.size(); i++) {
            if (i == years.size() || years.get(i) != years.get(i - 1) + 1) {
                String from = years.get(begin).toString();
                spans.add(i - begin == 1 ? from : from + " to " + years.get(i - 1));
                begin = i;
            }
        }
        return String.join(", ", spans);
    }
}
