package freshfurrow.model.timeline.planters;

import freshfurrow.model.timeline.state.Journal;
import freshfurrow.model.timeline.state.Shortfall;
import freshfurrow.model.timeline.tables.FieldTable;
import freshfurrow.model.timeline.tables.SeasonTables;
import java.util.Arrays;

/** The lists that are played out: those given, without the fields that their planters may not plant. */
public final class FieldOrder {
    /** No recipe. */
    public static final int WITHOUT_EXTRACT = -1;

    private final SeasonTables tables;
    private final FieldTable fields;
    private final int[][] lists;
    private final int[] sizes;
    private int misplacedFields;
    private long leftOutDm2;

    public FieldOrder(SeasonTables tables) {
        this.tables = tables;
        this.fields = tables.fields();
        lists = new int[tables.planters().count()][tables.fields().count()];
        sizes = new int[tables.planters().count()];
    }

    public void take(int[][] fieldLists, int[] listSizes) {
        misplacedFields = 0;
        leftOutDm2 = tables.fields().totalDm2();
        for (int p = 0; p < sizes.length; p++) {
            int[] list = lists[p];
            int size = 0;
            for (int i = 0; i < listSizes[p]; i++) {
                int entry = fieldLists[p][i];
                int field = fields.named(entry);
                if (tables.planters().allows(p, field)) {
                    list[size++] = entry;
                    leftOutDm2 -= tables.fields().areaDm2(field);
                } else {
                    misplacedFields++;
                }
            }
            sizes[p] = size;
        }
    }

    /** Tells of the fields that the given lists, which were taken last, leave out or misplace. */
    public void tellLeftOut(int[][] fieldLists, int[] listSizes, Journal journal) {
        boolean[] listed = new boolean[tables.fields().count()];
        for (int p = 0; p < sizes.length; p++) {
            for (int i = 0; i < listSizes[p]; i++) {
                int field = fields.named(fieldLists[p][i]);
                listed[field] = true;
                if (!tables.planters().allows(p, field)) {
                    journal.unserved(field, tables.fields().areaDm2(field), Shortfall.NOT_ALLOWED, 0);
                }
            }
        }
        for (int field = 0; field < listed.length; field++) {
            if (!listed[field]) {
                journal.unserved(field, tables.fields().areaDm2(field), Shortfall.LEFT_OUT, 0);
            }
        }
    }

    /** The first index at which a planter's list is not the same as in another order; more than the list's size when it is. */
    public int firstDifference(FieldOrder other, int planter) {
        int difference =
                Arrays.mismatch(lists[planter], 0, sizes[planter], other.lists[planter], 0, other.sizes[planter]);
        return difference < 0 ? sizes[planter] + 1 : difference;
    }

    public void copy(FieldOrder other) {
        for (int p = 0; p < sizes.length; p++) {
            System.arraycopy(other.lists[p], 0, lists[p], 0, other.sizes[p]);
        }
        System.arraycopy(other.sizes, 0, sizes, 0, sizes.length);
    }

    public int field(int planter, int i) {
        return fields.named(lists[planter][i]);
    }

    /** Of the mix that the field gets; {@link #WITHOUT_EXTRACT} when it is to be planted without. */
    public int recipe(int planter, int i) {
        int entry = lists[planter][i];
        return fields.isWithout(entry) ? WITHOUT_EXTRACT : fields.recipe(entry);
    }

    int size(int planter) {
        return sizes[planter];
    }

    /** Fields in the list of a planter that may not plant them. */
    public int misplacedFields() {
        return misplacedFields;
    }

    /** Area of misplaced fields and of those in no list, dm2. */
    public long leftOutDm2() {
        return leftOutDm2;
    }
}
