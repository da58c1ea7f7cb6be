package freshfurrow.app.begin;

import java.util.List;
import java.util.Optional;

/** A part of the season file that questions are about. */
public enum Section {
    SEASON("season", "", "the season", "When the season is, and when people work.", Questions.SEASON),
    PLACES("places", "yard", "the yard", "Where machines start.", Questions.PLACES),
    CROPS("crops", "", "crop", "What is planted, and the days in which it should be.", Questions.CROPS),
    RECIPES("recipes", "standard", "recipe", "What goes into the furrow.", Questions.RECIPES),
    PLANTERS("planters", "P1", "planter", "What plants, with a tank for mix.", Questions.PLANTERS),
    RIGS("rigs", "R1", "rig", "What makes extract, hauls water and fills planters.", Questions.RIGS),
    WATER("waterPoints", "well", "water point", "Where rigs draw water.", Questions.WATER),
    COMPOST("compost", "windrow", "compost lot", "Compost on hand.", Questions.COMPOST);

    private final String key;
    private final String usualId;
    private final String noun;
    private final String about;

    /** Never changed. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final List<Question> questions;

    Section(String key, String usualId, String noun, String about, List<Question> questions) {
        this.key = key;
        this.usualId = usualId;
        this.noun = noun;
        this.about = about;
        this.questions = List.copyOf(questions);
    }

    /** In the season file. */
    public String key() {
        return key;
    }

    /**
     * Of an entry that nobody named: P1, P2; well, well2.
     *
     * @param number from 1
     */
    public String usualId(int number) {
        if (usualId.endsWith("1")) {
            return usualId.substring(0, usualId.length() - 1) + number;
        }
        String usual = usualId.isEmpty() ? key : usualId;
        return number == 1 ? usual : usual + number;
    }

    /** What its entries are called is asked of people with these words; empty where they are not asked. */
    public Optional<String> naming() {
        return switch (this) {
            case PLANTERS, RIGS, WATER, COMPOST -> Optional.of("What do you call this " + noun + "?");
            case SEASON, PLACES, CROPS, RECIPES -> Optional.empty();
        };
    }

    /** What one of its entries is called. */
    public String noun() {
        return noun;
    }

    /** A sentence for whoever reads or fills it. */
    public String about() {
        return about;
    }

    public List<Question> questions() {
        return questions;
    }

    /** Where in the season file a value stands, as problems name it. */
    public String path(String id, Question question) {
        if (this == SEASON) {
            return question.form() == Form.HOURS || question.form() == Form.CLOSED
                    ? question.key()
                    : key + "." + question.key();
        }
        String entry = key + "." + id;
        return question.form() == Form.POSITION ? entry : entry + "." + question.key();
    }
}
