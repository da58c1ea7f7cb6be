package freshfurrow.cli.command;

import freshfurrow.model.plan.PlanFile;
import freshfurrow.model.quantity.Kind;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Rain;
import java.time.LocalDateTime;
import picocli.CommandLine.TypeConversionException;

/** Rain and outages as the command line says them. */
final class NewsText {
    private static final double THOUSANDTHS = 1e3;

    private NewsText() {}

    /**
     * Rain, as {@code 2027-05-03T14:00=0.8in}.
     *
     * @throws WrongArgument when it is none
     */
    static Rain rain(String text) {
        String[] parts = parts(
                "--rain",
                text,
                "=",
                "write when it started and how much fell, like 2027-05-03T14:00=0.8in or 2027-05-03T14:00=20mm");
        LocalDateTime at = moment("--rain", parts[0]);
        double mm = QuantityText.si("--rain", parts[1], Kind.RAIN, "");
        return new Rain(at.toLocalDate(), at.toLocalTime().toSecondOfDay(), Math.round(mm * THOUSANDTHS) / THOUSANDTHS);
    }

    /**
     * A machine that is down, as {@code R1=2027-05-04T00:00/2027-05-05T12:00}.
     *
     * @throws WrongArgument when it is none
     */
    static Outage down(String text) {
        String remedy = "write the machine and from when to when, like R1=2027-05-04T00:00/2027-05-05T12:00";
        String[] parts = parts("--down", text, "=", remedy);
        String[] times = parts("--down", parts[1], "/", remedy);
        LocalDateTime from = moment("--down", times[0]);
        LocalDateTime until = moment("--down", times[1]);
        if (!until.isAfter(from)) {
            throw new WrongArgument("--down '" + text + "' ends before it starts; " + remedy);
        }
        return new Outage(parts[0], from, until);
    }

    /**
     * A date and time that a plan can tell, as {@code 2027-05-03T14:00}.
     *
     * @throws WrongArgument when it is none
     */
    static LocalDateTime moment(String option, String text) {
        try {
            LocalDateTime moment = new MomentConverter().convert(text);
            if (moment.getYear() < PlanFile.FIRST_YEAR || moment.getYear() > PlanFile.LAST_YEAR) {
                throw new WrongArgument(option + " '" + text + "' is out of range; use years from "
                        + PlanFile.FIRST_YEAR + " to " + PlanFile.LAST_YEAR);
            }
            return moment;
        } catch (TypeConversionException e) {
            throw new WrongArgument(option + " " + e.getMessage());
        }
    }

    private static String[] parts(String option, String text, String between, String remedy) {
        int at = text.indexOf(between);
        if (at <= 0 || at == text.length() - 1) {
            throw new WrongArgument(option + " '" + text + "' is incomplete; " + remedy);
        }
        return new String[] {
            text.substring(0, at).strip(), text.substring(at + 1).strip()
        };
    }
}
