package freshfurrow.model.edit;

import static freshfurrow.model.edit.EditedFile.append;
import static freshfurrow.model.edit.EditedFile.edited;
import static freshfurrow.model.edit.EditedFile.map;
import static freshfurrow.model.edit.EditedFile.remove;
import static freshfurrow.model.edit.EditedFile.season;
import static freshfurrow.model.edit.EditedFile.set;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Edits of fields in CSV files (RFC 4180), with the text before and after each worked out by hand. */
final class FieldTableEditsTest {
    private static final String TABLE = "id,name,area (ac),crop\r\nA,\"Long, flat\",40,corn\r\nB,,18 ha,corn\r\n";

    @Test
    void aFigureTakesTheUnitOfItsHeaderOrBringsItsOwn() {
        assertThat(edit(TABLE, set("fields.A.area", "45 ac"))).isEqualTo(TABLE.replace("40", "45"));
        assertThat(edit(TABLE, set("fields.A.area", "18 ha"))).isEqualTo(TABLE.replace("40", "18 ha"));
        assertThat(edit(TABLE, set("fields.B.area", "50 ac"))).isEqualTo(TABLE.replace("18 ha", "50"));
        String bare = "id,area,crop\nA,40 ac,corn\n";
        assertThat(edit(bare, set("fields.A.area", "45 ac"))).isEqualTo("id,area,crop\nA,45 ac,corn\n");
    }

    @Test
    void quotesStayAndComeOnlyWhereTheyAreNeeded() {
        assertThat(edit(TABLE, set("fields.A.name", "Short"))).isEqualTo(TABLE.replace("Long, flat", "Short"));
        assertThat(edit(TABLE, set("fields.B.name", "the \"new\" one, wet")))
                .isEqualTo(TABLE.replace("B,,", "B,\"the \"\"new\"\" one, wet\","));
        assertThat(edit(TABLE, set("fields.B.name", "two\nlines")))
                .isEqualTo(TABLE.replace("B,,", "B,\"two\nlines\","));
        assertThat(edit(TABLE, set("fields.B.name", " #1: Joe's "))).isEqualTo(TABLE.replace("B,,", "B,#1: Joe's,"));
    }

    @Test
    void aCellIsEmptied() {
        assertThat(edit(TABLE, remove("fields.A.crop"))).isEqualTo(TABLE.replace("40,corn", "40,"));
    }

    @Test
    void aMissingColumnComesLastAndOtherRowsStay() {
        assertThat(edit(TABLE, set("fields.B.planters", Value.list("P1", "P2"))))
                .isEqualTo("id,name,area (ac),crop,planters\r\nA,\"Long, flat\",40,corn\r\nB,,18 ha,corn,P1 P2\r\n");
        assertThat(edit("id,area,crop,,\nA,1 ac,corn,,\n", set("fields.A.recipe", "r")))
                .isEqualTo("id,area,crop,recipe,\nA,1 ac,corn,r,\n");
        assertThat(edit("id,area,crop,name,recipe\nA,1 ac,corn\n", set("fields.A.recipe", "r")))
                .isEqualTo("id,area,crop,name,recipe\nA,1 ac,corn,,r\n");
    }

    @Test
    void oneMoreMachineIsPutBehindThoseOfTheCell() {
        assertThat(edit("id,area,crop,planters\nA,1 ac,corn,P1\n", append("fields.A.planters", "P2")))
                .isEqualTo("id,area,crop,planters\nA,1 ac,corn,P1 P2\n");
    }

    @Test
    void aNewFieldIsARowBehindTheLast() {
        assertThat(edit(TABLE, set("fields.C", map("area", "30 ac", "crop", "corn", "name", "a,b"))))
                .isEqualTo(TABLE + "C,\"a,b\",30,corn\r\n");
        assertThat(edit("id,area,crop", set("fields.C", map("area", "30 ac", "drainage", "well"))))
                .isEqualTo("id,area,crop,drainage\nC,30 ac,,well");
        assertThat(edit("id,area,crop\nA,1 ac,corn\n\n", set("fields.C.crop", "corn")))
                .isEqualTo("id,area,crop\nA,1 ac,corn\nC,,corn\n\n");
    }

    @Test
    void aFieldGoesWithItsRow() {
        assertThat(edit(TABLE, remove("fields.A"))).isEqualTo(TABLE.replace("A,\"Long, flat\",40,corn\r\n", ""));
        assertThat(edit("id,area,crop\nA,1 ac,corn\nB,2 ac,corn", remove("fields.B")))
                .isEqualTo("id,area,crop\nA,1 ac,corn");
        assertThat(edit("id,area,crop\nA,1 ac,corn\n\nB,2 ac,corn", remove("fields.B")))
                .isEqualTo("id,area,crop\nA,1 ac,corn\n");
        assertThat(edit("id,area,crop\nA,1 ac,corn\n\n\nB,2 ac,corn", remove("fields.B")))
                .isEqualTo("id,area,crop\nA,1 ac,corn\n\n");
        assertThat(edit("id,name\nA,\"of\ntwo lines\"\nB,x\n", remove("fields.A")))
                .isEqualTo("id,name\nB,x\n");
    }

    @Test
    void anIdIsChangedInItsCell() {
        assertThat(edit(TABLE, set("fields.B.id", "B2"))).isEqualTo(TABLE.replace("\nB,", "\nB2,"));
    }

    @Test
    void fieldsAreShownAsIfTheyStoodInTheSeasonFile() {
        assertThat(season("f.csv", TABLE).tree())
                .containsEntry(
                        "fields",
                        Map.of(
                                "A", Map.of("name", "Long, flat", "area", "40 ac", "crop", "corn"),
                                "B", Map.of("area", "18 ha", "crop", "corn")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "NO", "0123", "1,200", "\"", "\"\"", "'", "a\"b", "größe", "𝛼", "a\r\nb", "=1+1", "45", "a;b", "#"
            })
    void whateverTextIsReadBackToTheLetter(String text) {
        SeasonText after = EditedFile.edited(season("f.csv", TABLE), set("fields.B.name", text));
        assertThat(after.tree().get("fields").toString()).contains("name=" + text + ",");
    }

    @Test
    void whatHasNoPlaceIsRefused() {
        assertRefused(TABLE, remove("fields.C"), "f.csv: C: has no row; look at the season as it is now");
        assertRefused(
                TABLE,
                set("fields.A.name", "\ud800"),
                "f.csv:2: A.name: cannot be written so that it is read back the same; change it in f.csv itself");
        assertRefused(
                TABLE,
                set("fields.A.window.first", "x"),
                "f.csv:2: A.window.first: has no parts: a cell is one value; write the whole cell");
        assertRefused(
                "id,area\nA,1\nA,2\n",
                set("fields.A.area", "3"),
                "f.csv:2: A.area: stands in 2 rows; give every field an id of its own");
        assertRefused(
                "id;area\n",
                set("fields.A.area", "3"),
                "f.csv:1: is separated by semicolons; save it again with commas (and points in decimals)");
        Edited missing = EditedFile.season("fields: gone.csv\n").with(set("fields.A.area", "3"));
        assertThat(((Edited.Refused) missing).problem())
                .hasToString("season.yaml:1: fields: 'gone.csv' cannot be read; name a file of fields that is there");
    }

    @Test
    void anotherFileOfFieldsIsNamedInTheSeasonFile() {
        SeasonText after =
                EditedFile.edited(season("f.csv", TABLE), new Edit.Set(List.of("fields"), Value.of("g.csv")));
        assertThat(after.files()).hasSize(1);
        assertThat(after.files().get(0).text()).isEqualTo("fields: g.csv\n");
    }

    private static String edit(String table, Edit edit) {
        return edited("f.csv", table, edit);
    }

    private static void assertRefused(String table, Edit edit, String problem) {
        Edited edited = season("f.csv", table).with(edit);
        assertThat(edited).isInstanceOf(Edited.Refused.class);
        assertThat(((Edited.Refused) edited).problem()).hasToString(problem);
    }
}
