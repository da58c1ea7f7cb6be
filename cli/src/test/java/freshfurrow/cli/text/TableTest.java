package freshfurrow.cli.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

final class TableTest {
    @Test
    void columnsAreAsWideAsTheirWidestCell() {
        Table table = new Table(80, List.of(Table.Column.left("Day"), Table.Column.right("Fills")), "Fields");
        table.row(List.of("Monday", "3"), List.of("N40 8 ha"));
        assertThat(table.lines()).containsExactly("Day     Fills  Fields", "Monday      3  N40 8 ha");
    }

    @Test
    void theLastColumnWrapsBetweenItsPartsAndNeverWithinOne() {
        Table table = new Table(16, List.of(Table.Column.left("Day")), "Fields");
        table.row(List.of("Mon"), List.of("N40 8 ha", "S80 4 ha", "a field with a long name"));
        assertThat(table.lines())
                .containsExactly("Day  Fields", "Mon  N40 8 ha,", "     S80 4 ha,", "     a field with a long name");
    }

    @Test
    void aRowWithoutPartsEndsWithItsLastCell() {
        Table table = new Table(80, List.of(Table.Column.left("Day")), "Fields");
        table.row(List.of("Mon"), List.of());
        assertThat(table.lines()).containsExactly("Day  Fields", "Mon");
    }

    @Test
    void aRowWithACellTooManyIsRefused() {
        Table table = new Table(80, List.of(Table.Column.left("Day")), "Fields");
        assertThatThrownBy(() -> table.row(List.of("Mon", "3"), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
