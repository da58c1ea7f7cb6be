package freshfurrow.app.begin;

import freshfurrow.app.begin.Question.Usual;
import freshfurrow.model.quantity.Kind;
import java.util.List;
import java.util.Optional;

/**
 * All questions. Ranges without a source are rules of thumb. The default figures are those of an invented farm; each is within its
 * range.
 */
final class Questions {
    /** Of the American Society of Agricultural and Biological Engineers; docs/developing/checks.md has the same figures. */
    private static final String D497 = "ASABE D497, row-crop planters";

    static final List<Question> SEASON = List.of(
            Question.of("name", "What do you call this season?", Form.NAME, ""),
            Question.of("first", "Which is its first day?", Form.DATE, ""),
            Question.of("last", "Which is its last day?", Form.DATE, ""),
            Question.of("timezone", "Which time zone do you work in? (like America/Chicago)", Form.ZONE, ""),
            text(
                    "hours",
                    "When do people work? (like 7-12, 12:30-8 pm)",
                    Form.HOURS,
                    "07:00/12:00, 12:30/20:00",
                    "08:00/12:30, 13:30/19:30"),
            Question.of(
                    "closed", "On which days does nobody work? (weekdays and dates, or none)", Form.CLOSED, "SUNDAY"));

    static final List<Question> PLACES = List.of(
            Question.of("at", "Where is the yard? (latitude and longitude, like 41.02, -97.01)", Form.POSITION, ""));

    static final List<Question> CROPS =
            List.of(Question.of("window", "When should it be planted? (first and last day)", Form.WINDOW, ""));

    static final List<Question> RECIPES = List.of(
            asked(
                    "mix",
                    "How much mix goes on an area?",
                    Kind.VOLUME_PER_AREA,
                    "15 gal/ac",
                    "10 to 30 gal/ac",
                    "140 L/ha",
                    "90 to 280 L/ha"),
            asked(
                    "compost",
                    "How much compost goes on an area?",
                    Kind.MASS_PER_AREA,
                    "1.8 lb/ac",
                    "1 to 3 lb/ac",
                    "2 kg/ha",
                    "1 to 3.5 kg/ha"),
            Question.quantity(
                            "hold",
                            "How long is extract worth applying after a batch is made?",
                            Kind.TIME,
                            new Usual("6 h", "4 to 8 h"),
                            new Usual("6 h", "4 to 8 h"))
                    .from("no public figure is known; set what you trust"));

    static final List<Question> PLANTERS = List.of(
            asked(
                    "width",
                    "How wide does the planter work?",
                    Kind.LENGTH,
                    "30 ft",
                    "15 to 60 ft",
                    "9 m",
                    "4.5 to 18 m"),
            asked(
                    "rowSpacing",
                    "How far apart are its rows?",
                    Kind.LENGTH,
                    "30 in",
                    "15 to 38 in",
                    "75 cm",
                    "38 to 97 cm"),
            asked("speed", "How fast does it plant?", Kind.SPEED, "5 mph", "4 to 7 mph", "8 km/h", "6.5 to 11 km/h")
                    .from(D497),
            new Question(
                    "fieldEfficiency",
                    "Which share of the time at work does it plant, and not turn or take seed?",
                    Form.SHARE,
                    Optional.empty(),
                    new Usual("0.65", "0.50 to 0.75"),
                    new Usual("0.65", "0.50 to 0.75"),
                    D497),
            asked(
                    "tank",
                    "How much mix does its tank hold?",
                    Kind.VOLUME,
                    "600 gal",
                    "200 to 1000 gal",
                    "2300 L",
                    "800 to 4000 L"),
            asked(
                    "roadSpeed",
                    "How fast does it drive on the road?",
                    Kind.SPEED,
                    "15 mph",
                    "10 to 20 mph",
                    "25 km/h",
                    "15 to 40 km/h"),
            asked(
                    "fillSetup",
                    "How long does it take to stop and connect a hose for a fill?",
                    Kind.TIME,
                    "6 min",
                    "3 to 10 min",
                    "6 min",
                    "3 to 10 min"),
            asked(
                    "moveTime",
                    "How long does it take to fold, leave a field and unfold in the next?",
                    Kind.TIME,
                    "12 min",
                    "5 to 20 min",
                    "12 min",
                    "5 to 20 min"));

    static final List<Question> RIGS = List.of(
            asked(
                    "drum",
                    "How much water does a full batch take?",
                    Kind.VOLUME,
                    "50 gal",
                    "30 to 100 gal",
                    "190 L",
                    "110 to 380 L"),
            asked(
                    "batchCompost",
                    "How much compost goes into a full batch?",
                    Kind.MASS,
                    "36 lb",
                    "20 to 60 lb",
                    "16 kg",
                    "9 to 27 kg"),
            asked(
                    "batchTime",
                    "How long does a batch take you?",
                    Kind.TIME,
                    "20 min",
                    "10 to 30 min",
                    "20 min",
                    "10 to 30 min"),
            asked(
                    "cleanTime",
                    "How long does it take to clean after a batch?",
                    Kind.TIME,
                    "5 min",
                    "2 to 10 min",
                    "5 min",
                    "2 to 10 min"),
            asked(
                    "nurseTank",
                    "How much does the rig's nurse tank hold?",
                    Kind.VOLUME,
                    "1200 gal",
                    "500 to 2500 gal",
                    "4500 L",
                    "2000 to 9500 L"),
            asked(
                    "transferRate",
                    "How fast does it pump into a planter?",
                    Kind.FLOW,
                    "60 gal/min",
                    "30 to 120 gal/min",
                    "230 L/min",
                    "110 to 450 L/min"),
            asked(
                    "roadSpeed",
                    "How fast does it drive on the road?",
                    Kind.SPEED,
                    "35 mph",
                    "25 to 50 mph",
                    "55 km/h",
                    "40 to 80 km/h"),
            asked(
                            "payload",
                            "What may the vehicle carry? (leave it empty if you do not know; `check` then gives no caution)",
                            Kind.MASS,
                            "",
                            "By its plate, like 14000 lb",
                            "",
                            "By its plate, like 6500 kg")
                    .from(""),
            asked(
                            "bucket",
                            "What does the compost in a full bucket weigh? (leave it empty if you use none)",
                            Kind.MASS,
                            "",
                            "Weigh one, like 25 lb",
                            "",
                            "Weigh one, like 11 kg")
                    .from(""),
            Question.of(
                    "extractAt",
                    "Where are batches made: at the field, or at the water? (field or water)",
                    Form.CHOICE,
                    "field"));

    static final List<Question> WATER = List.of(
            Question.of(
                    "at",
                    "Where is the water? (latitude and longitude; leave it empty if at the yard)",
                    Form.POSITION,
                    ""),
            asked(
                    "flow",
                    "How much does its hose give?",
                    Kind.FLOW,
                    "40 gal/min",
                    "10 to 100 gal/min",
                    "150 L/min",
                    "40 to 380 L/min"),
            asked(
                            "dailyLimit",
                            "How much may be drawn a day? (leave it empty if there is no limit)",
                            Kind.VOLUME,
                            "",
                            "None, or like 9000 gal",
                            "",
                            "None, or like 34000 L")
                    .from(""));

    static final List<Question> COMPOST = List.of(
            asked("mass", "How much compost is on hand?", Kind.MASS, "2000 lb", "", "900 kg", "")
                    .from(""),
            Question.of("from", "From which day on may it be used?", Form.DATE, ""));

    private Questions() {}

    private static Question asked(
            String key, String words, Kind kind, String us, String usRange, String metric, String metricRange) {
        return Question.quantity(key, words, kind, new Usual(us, usRange), new Usual(metric, metricRange));
    }

    private static Question text(String key, String words, Form form, String us, String metric) {
        return new Question(key, words, form, Optional.empty(), new Usual(us, ""), new Usual(metric, ""), "");
    }
}
