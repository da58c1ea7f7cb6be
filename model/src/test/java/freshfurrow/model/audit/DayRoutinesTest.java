package freshfurrow.model.audit;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.season.DaySpan;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.WorkHours;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The worked day, whose rig is set up from 05:50:00 to 06:00:00 and closed up from 10:35:00 to 10:40:00, and whose planter is flushed from
 * 12:57:00 to 13:07:00.
 */
class DayRoutinesTest {
    private static final Season SEASON = WorkedDay.season(day -> {
        day.rigHours = new WorkHours(List.of(new DaySpan(5 * 3600, 20 * 3600)));
        day.setUpS = 600;
        day.closeUpS = 300;
        day.flushS = 600;
    });
    private static final String SET_UP =
            "{\"kind\": \"setUp\", \"start\": \"2027-04-20T05:50:00\", \"end\": \"2027-04-20T06:00:00\", \"at\": \"yard\"}";
    private static final String CLOSE_UP =
            "{\"kind\": \"closeUp\", \"start\": \"2027-04-20T10:35:00\", \"end\": \"2027-04-20T10:40:00\", \"at\": \"A\"}";
    private static final String FLUSH =
            "{\"kind\": \"flush\", \"start\": \"2027-04-20T12:57:00\", \"end\": \"2027-04-20T13:07:00\", \"at\": \"B\"}";
    private static final String LAST_PLANTING = "\"load\": \"L2\", \"areaHa\": 1.62}";
    private static final String FIRST_DRIVE = "{\"kind\": \"move\", \"start\": \"2027-04-20T06:00:00\"";
    private static final String LAST_CLEAN = "10:35:00\", \"at\": \"A\"}";
    private static final String PLAN = WorkedDay.PLAN_AT_THE_FIELD
            .replace(FIRST_DRIVE, SET_UP + ", " + FIRST_DRIVE)
            .replace(LAST_CLEAN, LAST_CLEAN + ", " + CLOSE_UP)
            .replace(LAST_PLANTING, LAST_PLANTING + ", " + FLUSH);

    @TempDir
    private Path folder;

    @Test
    void aPlanWithAllOfThemHolds() throws Exception {
        assertThat(rulesBroken(PLAN)).isEmpty();
    }

    @Test
    void aPlanWithoutSettingUpIsCaught() throws Exception {
        assertThat(rulesBroken(PLAN.replace(SET_UP + ", ", ""))).containsExactly(Rule.SET_UP);
    }

    @Test
    void aPlanWithoutClosingUpIsCaught() throws Exception {
        assertThat(rulesBroken(PLAN.replace(", " + CLOSE_UP, ""))).containsExactly(Rule.CLOSE_UP);
    }

    @Test
    void aPlanWithoutFlushingAtTheEndOfTheDayIsCaught() throws Exception {
        assertThat(rulesBroken(PLAN.replace(", " + FLUSH, ""))).containsExactly(Rule.FLUSH);
    }

    @Test
    void aFlushBeforeTheLastMixOfTheDayIsCaught() throws Exception {
        String lunch = "{\"kind\": \"plant\", \"start\": \"2027-04-20T12:30:00\"";
        String before =
                "{\"kind\": \"flush\", \"start\": \"2027-04-20T12:20:00\", \"end\": \"2027-04-20T12:30:00\", \"at\": \"B\"}";

        assertThat(rulesBroken(PLAN.replace(", " + FLUSH, "").replace(lunch, before + ", " + lunch)))
                .contains(Rule.FLUSH);
    }

    @ParameterizedTest(name = "{0}: {1} -> {2}")
    @CsvSource(quoteCharacter = '`', delimiter = '|', textBlock = """
                    SET_UP   | "setUp", "start": "2027-04-20T05:50:00" | "setUp", "start": "2027-04-20T05:50:01"
                    CLOSE_UP | "end": "2027-04-20T10:40:00"            | "end": "2027-04-20T10:39:59"
                    FLUSH    | "end": "2027-04-20T13:07:00"            | "end": "2027-04-20T13:06:59"
                    """)
    void oneThatIsTooShortIsCaught(Rule rule, String right, String wrong) throws Exception {
        assertThat(rulesBroken(PLAN.replace(right, wrong))).containsExactly(rule);
    }

    @Test
    void settingUpAfterTheFirstWorkIsCaught() throws Exception {
        String late =
                "{\"kind\": \"setUp\", \"start\": \"2027-04-20T06:26:00\", \"end\": \"2027-04-20T06:36:00\", \"at\": \"A\"}";
        String firstBatch = "{\"kind\": \"extract\", \"start\": \"2027-04-20T06:57:00\"";

        assertThat(rulesBroken(PLAN.replace(SET_UP + ", ", "").replace(firstBatch, late + ", " + firstBatch)))
                .containsExactly(Rule.SET_UP);
        assertThat(rulesBroken(PLAN.replace(firstBatch, late + ", " + firstBatch)))
                .as("a second time")
                .containsExactly(Rule.SET_UP);
    }

    @Test
    void closingUpBeforeTheLastWorkIsCaught() throws Exception {
        String early =
                "{\"kind\": \"closeUp\", \"start\": \"2027-04-20T07:36:20\", \"end\": \"2027-04-20T07:41:20\", \"at\": \"A\"}";
        String lastBatch = "{\"kind\": \"extract\", \"start\": \"2027-04-20T10:10:00\"";

        assertThat(rulesBroken(PLAN.replace(lastBatch, early + ", " + lastBatch)))
                .containsExactly(Rule.CLOSE_UP);
    }

    @Test
    void settingUpOutsideTheHoursIsCaught() throws Exception {
        assertThat(rulesBroken(
                        WorkedDay.season(day -> {
                            day.setUpS = 600;
                            day.closeUpS = 300;
                        }),
                        PLAN))
                .contains(Rule.WORK_HOURS);
    }

    private Set<Rule> rulesBroken(String text) throws Exception {
        return rulesBroken(SEASON, text);
    }

    private Set<Rule> rulesBroken(Season season, String text) throws Exception {
        Set<Rule> rules = EnumSet.noneOf(Rule.class);
        Audit.check(season, PlanFile.readToAudit(Files.writeString(folder.resolve("plan.json"), text)))
                .forEach(finding -> rules.add(finding.rule()));
        return rules;
    }
}
