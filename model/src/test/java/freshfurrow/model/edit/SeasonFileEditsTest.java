package freshfurrow.model.edit;

import static freshfurrow.model.edit.EditedFile.append;
import static freshfurrow.model.edit.EditedFile.edited;
import static freshfurrow.model.edit.EditedFile.map;
import static freshfurrow.model.edit.EditedFile.remove;
import static freshfurrow.model.edit.EditedFile.season;
import static freshfurrow.model.edit.EditedFile.set;
import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.read.tree.TextFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Edits of season files, with the text before and after each worked out by hand. */
final class SeasonFileEditsTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void aValueInBracesIsReplacedAndNothingElse() {
        assertThat(edited(
                        "rigs: # two soon\n  R1: {drum: 45 gal, at: yard} # the old one\n",
                        set("rigs.R1.drum", "50 gal")))
                .isEqualTo("rigs: # two soon\n  R1: {drum: 50 gal, at: yard} # the old one\n");
    }

    @Test
    void aValueInABlockKeepsItsCommentItsQuotesAndItsLineEnds() {
        assertThat(edited("a: 1\r\nseason:\r\n  name:   'Old'   # name\r\n", set("season.name", "Jo's")))
                .isEqualTo("a: 1\r\nseason:\r\n  name:   'Jo''s'   # name\r\n");
        assertThat(edited("from: \"14:00\"", set("from", "15:00"))).isEqualTo("from: \"15:00\"");
    }

    @Test
    void aByteOrderMarkStays() throws Exception {
        Path file = Files.writeString(folder.resolve("season.yaml"), "\ufeffa: ü\nb: 2\n");
        TextFile before = TextFile.read(file, "season.yaml", 1);
        byte[] after =
                edited(EditedFile.of(before), set("b", "3")).files().get(0).bytes();
        assertThat(after).isEqualTo("\ufeffa: ü\nb: 3\n".getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "\ud800",
                "NO",
                "on",
                "0123",
                "14:00",
                "1,200",
                "a # b",
                "a: b",
                "#",
                " led",
                "trailed ",
                "null",
                "~",
                "\"",
                "'",
                "it's",
                "{a}",
                "[b]",
                "- c",
                "-",
                "? d",
                "& e",
                "*f",
                "!g",
                "%h",
                "@i",
                "`j",
                "|",
                ">",
                "größe",
                "𝛼 beta",
                "a\nb",
                "tab\there",
                "2027-05-03",
                "1e3",
                "a,b",
                "a]b",
                ": x",
                "x:",
                "\u0085",
                "\u2028",
                "\ufeff",
                "yes: no, maybe",
                "..."
            })
    void whateverTextIsReadBackToTheLetter(String text) {
        for (String yaml : new String[] {"a: 1\nb: 2\n", "{a: 1, b: 2}", "a: '1'\nb: {c: 2, d: 3}", "{\"a\": \"1\"}"}) {
            SeasonText after = edited(season(yaml), set("a", text));
            assertThat(after.tree()).containsEntry("a", text);
            after = edited(season(yaml), set("new", text));
            assertThat(after.tree()).containsEntry("new", text);
        }
    }

    @Test
    void quotesComeOnlyWhereTheyAreNeeded() {
        assertThat(edited("a: 1\n", set("a", "45 gal/ac"))).isEqualTo("a: 45 gal/ac\n");
        assertThat(edited("a: 1\n", set("a", "14:00"))).isEqualTo("a: 14:00\n");
        assertThat(edited("a: 1\n", set("a", "x, y"))).isEqualTo("a: x, y\n");
        assertThat(edited("{a: 1}\n", set("a", "x, y"))).isEqualTo("{a: \"x, y\"}\n");
        assertThat(edited("a: 1\n", set("a", "null"))).isEqualTo("a: \"null\"\n");
    }

    @Test
    void aMissingKeyComesLastInItsMapAndInTheStyleOfThat() {
        assertThat(edited(
                        "crops:\n  corn: {window: w} # early\n  beans: {window: v}\n",
                        set("crops.corn.lateWeight", "2")))
                .isEqualTo("crops:\n  corn: {window: w, lateWeight: 2} # early\n  beans: {window: v}\n");
        assertThat(edited(
                        "crops:\n    corn:\n        window: w # early\n\n# beans later\n",
                        set("crops.corn.lateWeight", "2")))
                .isEqualTo("crops:\n    corn:\n        window: w # early\n        lateWeight: 2\n\n# beans later\n");
        assertThat(edited("a: {}\n", set("a.b", "1"))).isEqualTo("a: {b: 1}\n");
        assertThat(edited("a: { }\n", set("a.b", "1"))).isEqualTo("a: {b: 1}\n");
        assertThat(edited("{\"a\": 1,\"b\": {\"c\": \"x\"}}", set("b.d", "y")))
                .isEqualTo("{\"a\": 1,\"b\": {\"c\": \"x\", \"d\": \"y\"}}");
    }

    @Test
    void aMapInBracesOverLinesGrowsAsItIsLaidOut() {
        assertThat(edited("P1: {a: 1,\n     b: 2, c: 3}\n", set("P1.d", "4")))
                .isEqualTo("P1: {a: 1,\n     b: 2, c: 3, d: 4}\n");
        assertThat(edited("P1: {\n  a: 1, # one\n  b: 2 # two\n}\n", set("P1.c", "3")))
                .isEqualTo("P1: {\n  a: 1, # one\n  b: 2, # two\n  c: 3\n}\n");
        assertThat(edited("P1: {\n  a: 1,\n  b: 2, # two\n}\n", set("P1.c", "3")))
                .isEqualTo("P1: {\n  a: 1,\n  b: 2, # two\n  c: 3,\n}\n");
        assertThat(edited("P1: {\n  a: 1,\n  b: 2}\n", set("P1.c", "3")))
                .isEqualTo("P1: {\n  a: 1,\n  b: 2,\n  c: 3}\n");
    }

    @Test
    void keysOnTheWayAreMade() {
        assertThat(edited("hours: x\n", set("crops.corn.lateWeight", "2")))
                .isEqualTo("hours: x\ncrops:\n  corn: {lateWeight: 2}\n");
        assertThat(edited("crops: # none yet\nhours: x", set("crops.corn.lateWeight", "2")))
                .isEqualTo("crops: # none yet\n  corn: {lateWeight: 2}\nhours: x");
        assertThat(edited("a: 1", set("drying.well", "1 d/in"))).isEqualTo("a: 1\ndrying: {well: 1 d/in}");
        assertThat(edited("rigs: {R1: }\n", set("rigs.R1.at", "yard"))).isEqualTo("rigs: {R1: {at: yard} }\n");
    }

    @Test
    void aKeyGoesWithItsLinesAndItsComment() {
        assertThat(edited("a: 1\n# of b\nb:   # two\n  c: 1\n  d: 2 # end\n# of e\ne: 3\n", remove("b")))
                .isEqualTo("a: 1\n# of b\n# of e\ne: 3\n");
        assertThat(edited("a: 1\r\nb: 2", remove("b"))).isEqualTo("a: 1");
        assertThat(edited("r:\n  - date: d # when\n    amount: x\n", remove("r.1.date")))
                .isEqualTo("r:\n  - amount: x\n");
    }

    @Test
    void aKeyInBracesGoesWithItsComma() {
        assertThat(edited("{a: 1, b: 2, c: 3}", remove("a"))).isEqualTo("{b: 2, c: 3}");
        assertThat(edited("{a: 1, b: 2, c: 3}", remove("b"))).isEqualTo("{a: 1, c: 3}");
        assertThat(edited("{a: 1, b: 2, c: 3}", remove("c"))).isEqualTo("{a: 1, b: 2}");
        assertThat(edited("P: {a: 1, b: 2,\n    c: 3, d: 4}\n", remove("P.b")))
                .isEqualTo("P: {a: 1,\n    c: 3, d: 4}\n");
        assertThat(edited("P: {a: 1, b: 2,\n    c: 3, d: 4}\n", remove("P.c")))
                .isEqualTo("P: {a: 1, b: 2,\n    d: 4}\n");
        assertThat(edited("P: {\n  a: 1, # one\n  b: 2, # two\n  c: 3 # three\n}\n", remove("P.b")))
                .isEqualTo("P: {\n  a: 1, # one\n  c: 3 # three\n}\n");
        assertThat(edited("P: {\n  a: 1, # one\n  b: 2, # two\n  c: 3 # three\n}\n", remove("P.c")))
                .isEqualTo("P: {\n  a: 1, # one\n  b: 2 # two\n}\n");
        assertThat(edited("P: {a: 1, # one\n  b: 2, # two\n  c: 3}\n", remove("P.a")))
                .isEqualTo("P: {b: 2, # two\n  c: 3}\n");
    }

    @Test
    void theLastKeyLeavesAnEmptyMapAndWhatIsFixedOfAFieldGoesWhole() {
        assertThat(edited("places:\n  yard: {lat: 1} # here\nx: y\n", remove("places.yard")))
                .isEqualTo("places: {}\nx: y\n");
        assertThat(edited("drying: {well: 1}\n", remove("drying.well"))).isEqualTo("drying: {}\n");
        assertThat(edited("fixed:\n  N40: {on: d}\n  S80: {on: e}\n", remove("fixed.N40.on")))
                .isEqualTo("fixed:\n  S80: {on: e}\n");
    }

    @Test
    void listsGrowAndShrinkInTheirOwnStyle() {
        String rain = "rain: # gauges\n  - {date: a, amount: 1 in} # big\n  - {date: b, amount: 2 in}\n# end\n";
        assertThat(edited(rain, append("rain", map("date", "c", "amount", "3 in"))))
                .isEqualTo(rain.replace("# end", "  - {date: c, amount: 3 in}\n# end"));
        assertThat(edited(rain, remove("rain.1"))).isEqualTo("rain: # gauges\n  - {date: b, amount: 2 in}\n# end\n");
        assertThat(edited("rain:\n-   date: a\n    amount: x\n", append("rain", map("date", "b", "amount", "y"))))
                .isEqualTo("rain:\n-   date: a\n    amount: x\n-   date: b\n    amount: y\n");
        assertThat(edited("rain:\n  - {date: a} # only\nx: y\n", remove("rain.1")))
                .isEqualTo("rain: []\nx: y\n");
        assertThat(edited("closed: [SUNDAY, 2027-05-31]\n", append("closed", "2027-06-01")))
                .isEqualTo("closed: [SUNDAY, 2027-05-31, 2027-06-01]\n");
        assertThat(edited("closed: [SUNDAY, 2027-05-31]\n", remove("closed.1"))).isEqualTo("closed: [2027-05-31]\n");
        assertThat(edited("closed: SUNDAY # rest\n", append("closed", "2027-06-01")))
                .isEqualTo("closed: [SUNDAY, 2027-06-01] # rest\n");
        assertThat(edited("a: 1\n", append("rain", map("date", "c")))).isEqualTo("a: 1\nrain:\n  - {date: c}\n");
        assertThat(edited("a: 1\nclosed: # none\n", append("closed", "SUNDAY")))
                .isEqualTo("a: 1\nclosed: [SUNDAY] # none\n");
    }

    @Test
    void aMapThatIsSetWholeKeepsWhatItSaysAlready() {
        assertThat(edited(
                        "corn:\n  window: w # early\n  lateWeight: 1\n  recipe: r\n",
                        set("corn", map("window", "w", "lateWeight", "2", "work", "plant"))))
                .isEqualTo("corn:\n  window: w # early\n  lateWeight: 2\n  work: plant\n");
        assertThat(edited("hours: [\"07:00/12:00\", b] # h\n", set("hours", Value.list("07:00/12:00", "c", "d"))))
                .isEqualTo("hours: [\"07:00/12:00\", c, d] # h\n");
        assertThat(edited("a: [1, 2, 3]\n", set("a", Value.list("1")))).isEqualTo("a: [1]\n");
    }

    @Test
    void aBlockIsReplacedByAValueBehindItsKey() {
        assertThat(edited("fields: # all\n  A: {area: 1}\n  B: {area: 2} # two\nx: y\n", set("fields", "fields.csv")))
                .isEqualTo("fields: fields.csv # all\nx: y\n");
    }

    @Test
    void aNewMachineIsBrokenOverLinesBeforeItIsTooWide() {
        Map<String, String> keys = new LinkedHashMap<>();
        for (int i = 10; i < 30; i++) {
            keys.put("key" + i, "value");
        }
        String text = edited("rigs:\n  R1: {at: yard}\n", set("rigs.R2", Value.map(keys)));
        assertThat(text)
                .startsWith("rigs:\n  R1: {at: yard}\n  R2: {key10: value, ")
                .contains(",\n       key")
                .endsWith("}\n");
        assertThat(text.lines().allMatch(line -> line.length() <= NewText.WIDEST))
                .isTrue();
    }

    @Test
    void whatIsAlreadySoIsNotTouched() {
        assertThat(edited("a:   'x'\n", set("a", "x"))).isEqualTo("a:   'x'\n");
    }

    @Test
    void whatHasNoPlaceIsRefused() {
        assertRefused(
                "a: 1\n",
                set("a.b", "2"),
                "season.yaml:1: a: is '1' where keys with values belong; take it out first, or change it in the file");
        assertRefused("a: 1\n", remove("b"), "season.yaml:1: has no b; look at the season as it is now");
        assertRefused("a: [x]\n", remove("a.2"), "season.yaml:1: a: has no item 2; look at the season as it is now");
        assertRefused(
                "a: {b: 1}\n", append("a", "x"), "season.yaml:1: a: is a map of keys, not a list; set a key of it");
        assertRefused(
                "a: |+\n  kept blank lines\n\n",
                set("b", "2"),
                "season.yaml: b: is written in a way that cannot be changed without changing more; change it in season.yaml itself");
    }

    private static void assertRefused(String yaml, Edit edit, String problem) {
        Edited edited = season(yaml).with(edit);
        assertThat(edited).isInstanceOf(Edited.Refused.class);
        assertThat(((Edited.Refused) edited).problem()).hasToString(problem);
    }
}
