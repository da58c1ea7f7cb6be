package freshfurrow.model.plan;

import freshfurrow.model.season.CompostLot;
import freshfurrow.model.season.Judgement;
import freshfurrow.model.season.Mix;
import freshfurrow.model.season.Outage;
import freshfurrow.model.season.Rain;
import freshfurrow.model.season.Standing;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads what was done before a plan. */
final class StartFromJson {
    private StartFromJson() {}

    static PlanStart read(JsonPlace place) throws PlanFileException {
        place.withAndPerhaps(
                List.of("logSha256", "judged", "fromLog", StartChecksum.KEY),
                "now",
                "planted",
                "lots",
                "rain",
                "outages",
                "batches",
                "planters",
                "rigs",
                "drawnL",
                "promised",
                "loadsMade",
                "batchesMade");
        Standing standing = standing(place);
        PlanStart start = new PlanStart(
                standing,
                place.list("planted", StartFromJson::planted),
                place.list("lots", StartFromJson::lot),
                place.list("rain", StartFromJson::rain),
                place.list("outages", StartFromJson::outage),
                judged(place),
                place.list("batches", PlanRecords.BATCH::read),
                place.has("fromLog") ? fromLog(place.at("fromLog")) : FromLog.NOTHING,
                place.has("logSha256") ? Optional.of(place.text("logSha256")) : Optional.empty());
        return StartChecksum.checked(place, start);
    }

    private static Standing standing(JsonPlace place) throws PlanFileException {
        var now = place.time("now");
        var planters = place.map("planters", StartFromJson::planter);
        var rigs = place.map("rigs", StartFromJson::rig);
        var drawnL = place.map("drawnL", JsonPlace::asNumber);
        var promised = place.map("promised", StartFromJson::promise);
        int loads = place.count("loadsMade");
        int batches = place.count("batchesMade");
        return place.valid(its -> new Standing(now, planters, rigs, drawnL, promised, loads, batches));
    }

    private static Standing.OfPlanter planter(JsonPlace place) throws PlanFileException {
        place.withAndPerhaps(List.of("filledOn", "tank", "lines"), "at", "freeFrom");
        return new Standing.OfPlanter(
                place.text("at"),
                place.time("freeFrom"),
                place.has("filledOn") ? Optional.of(place.date("filledOn")) : Optional.empty(),
                place.has("tank") ? Optional.of(tank(place.at("tank"))) : Optional.empty(),
                place.has("lines") ? Optional.of(lines(place.at("lines"))) : Optional.empty());
    }

    private static Standing.Tank tank(JsonPlace place) throws PlanFileException {
        place.with("load", "rig", "mix");
        return new Standing.Tank(place.text("load"), place.text("rig"), mix(place.at("mix")));
    }

    private static Standing.Lines lines(JsonPlace place) throws PlanFileException {
        place.with("recipe", "applied");
        return new Standing.Lines(place.text("recipe"), place.time("applied"));
    }

    private static Standing.OfRig rig(JsonPlace place) throws PlanFileException {
        place.withAndPerhaps(List.of("mix", "compostKg", "setUpAt"), "at", "freeFrom", "waterL", "cleanDue");
        String at = place.text("at");
        LocalDateTime freeFrom = place.time("freeFrom");
        double waterL = place.number("waterL");
        Optional<Mix> mix = place.has("mix") ? Optional.of(mix(place.at("mix"))) : Optional.empty();
        boolean cleanDue = place.yesOrNo("cleanDue");
        Map<String, Double> compostKg = place.has("compostKg") ? place.map("compostKg", JsonPlace::asNumber) : Map.of();
        Optional<LocalDateTime> setUpAt = place.has("setUpAt") ? Optional.of(place.time("setUpAt")) : Optional.empty();
        return place.valid(its -> new Standing.OfRig(at, freeFrom, waterL, mix, cleanDue, compostKg, setUpAt));
    }

    private static Mix mix(JsonPlace place) throws PlanFileException {
        place.with("recipe", "areaHa", "deadline", "batches");
        String recipe = place.text("recipe");
        double areaHa = place.number("areaHa");
        LocalDateTime deadline = place.time("deadline");
        List<String> batches = place.list("batches", JsonPlace::asText);
        return place.valid(its -> new Mix(recipe, areaHa, deadline, batches));
    }

    private static Standing.Promise promise(JsonPlace place) throws PlanFileException {
        place.with("planter", "day");
        return new Standing.Promise(place.text("planter"), place.date("day"));
    }

    private static PlanStart.Planted planted(JsonPlace place) throws PlanFileException {
        place.with("field", "date", "areaHa");
        String field = place.text("field");
        LocalDate date = place.date("date");
        double areaHa = place.number("areaHa");
        return place.valid(its -> new PlanStart.Planted(field, date, areaHa));
    }

    private static CompostLot lot(JsonPlace place) throws PlanFileException {
        place.with("lot", "kg", "from");
        String id = place.text("lot");
        double kg = place.number("kg");
        LocalDate from = place.date("from");
        return place.valid(its -> new CompostLot(id, kg, from));
    }

    private static Rain rain(JsonPlace place) throws PlanFileException {
        place.with("at", "mm");
        LocalDateTime at = place.time("at");
        double mm = place.number("mm");
        return place.valid(its -> new Rain(at.toLocalDate(), at.toLocalTime().toSecondOfDay(), mm));
    }

    private static Outage outage(JsonPlace place) throws PlanFileException {
        place.with("machine", "from", "until");
        String machine = place.text("machine");
        LocalDateTime from = place.time("from");
        LocalDateTime until = place.time("until");
        return place.valid(its -> new Outage(machine, from, until));
    }

    private static FromLog fromLog(JsonPlace place) throws PlanFileException {
        place.with("rain", "outages", "lotsKg");
        return new FromLog(
                place.list("rain", StartFromJson::rain),
                place.list("outages", StartFromJson::outage),
                place.map("lotsKg", JsonPlace::asNumber));
    }

    private record Said(String field, Judgement judgement) {}

    private static Map<String, List<Judgement>> judged(JsonPlace place) throws PlanFileException {
        Map<String, List<Judgement>> judged = new LinkedHashMap<>();
        if (place.has("judged")) {
            place.list("judged", StartFromJson::said)
                    .forEach(one -> judged.computeIfAbsent(one.field(), none -> new ArrayList<>())
                            .add(one.judgement()));
        }
        return judged;
    }

    private static Said said(JsonPlace place) throws PlanFileException {
        place.with("field", "said", "fitFrom");
        String field = place.text("field");
        LocalDateTime said = place.time("said");
        LocalDateTime fitFrom = place.time("fitFrom");
        return place.valid(its -> new Said(field, new Judgement(said, fitFrom)));
    }
}
