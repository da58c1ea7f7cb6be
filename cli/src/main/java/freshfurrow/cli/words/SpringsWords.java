package freshfurrow.cli.words;

import freshfurrow.app.refusal.SpringsRefusal;
import freshfurrow.model.weather.Springs;
import freshfurrow.model.weather.YearSpans;

/** That there are no such springs, or no such comparison of them. */
final class SpringsWords implements SpringsRefusal.Visitor<String> {
    @Override
    public String visit(SpringsRefusal.NoRecord refusal) {
        return "The season names no weather record; write weather: {file: station.csv} in " + refusal.season()
                + " (docs/weather.md)";
    }

    @Override
    public String visit(SpringsRefusal.NoWholeSpring refusal) {
        return refusal.record() + ": holds no year with all days from " + refusal.first() + " to " + refusal.last()
                + "; give a longer record";
    }

    @Override
    public String visit(SpringsRefusal.TooFewSprings refusal) {
        return refusal.record() + ": holds " + refusal.there() + " springs, too few to generate more; ask for at"
                + " most --springs " + refusal.there() + ", or give a record of at least "
                + Springs.LEAST_RECORDED + " years";
    }

    @Override
    public String visit(SpringsRefusal.NoSuchYears refusal) {
        return refusal.record() + " has the season's days of " + YearSpans.words(refusal.there())
                + ", but of none of the years asked for";
    }

    @Override
    public String visit(SpringsRefusal.OtherDates refusal) {
        return "variant " + refusal.variant() + " has a different first or last day than the season, so"
                + " they cannot share the same springs; leave season.first and season.last as they are";
    }

    @Override
    public String visit(SpringsRefusal.TimesDoNotVary refusal) {
        return "A reserve helps only where times vary; write spread: {} in " + refusal.season()
                + " for the usual spread (docs/uncertain-times.md)";
    }

    @Override
    public String visit(SpringsRefusal.NoComparison refusal) {
        return refusal.file() + ": is not a comparison that can be read (" + refusal.reason()
                + "); make it again with 'freshfurrow compare'";
    }

    @Override
    public String visit(SpringsRefusal.MisfitSlice refusal) {
        return refusal.file() + ": does not match the slices before it: " + refusal.reason()
                + "; make all slices with the same season, variants, --seed, --steps and --forecast";
    }
}
