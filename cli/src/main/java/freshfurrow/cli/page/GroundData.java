package freshfurrow.cli.page;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.cli.text.Figures;
import freshfurrow.cli.text.GroundText;
import freshfurrow.model.season.Drainage;
import freshfurrow.model.season.Field;
import freshfurrow.model.season.FieldGround;
import freshfurrow.model.season.Season;
import freshfurrow.model.season.SeasonTime;
import freshfurrow.model.timeline.WetGround;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Collectors;

/** When fields are too wet: by drainage class, of those that people judged field by field, and when all are. */
final class GroundData {
    private final Season season;
    private final SeasonTime time;
    private final Figures figures;

    private GroundData(Season season) {
        this.season = season;
        time = season.time();
        figures = new Figures(season.units());
    }

    static void put(ObjectNode data, Season season) {
        GroundData ground = new GroundData(season);
        ArrayNode wet = data.putArray("wet");
        for (Drainage drainage : Drainage.values()) {
            if (season.fields().stream().map(Field::drainage).anyMatch(drainage::equals)) {
                ground.put(wet.addObject(), FieldGround.of(drainage));
            }
        }
        season.fields().stream()
                .map(Field::ground)
                .filter(its -> !its.judged().isEmpty())
                .distinct()
                .forEach(its -> ground.put(wet.addObject().put("fields", ground.fields(its)), its));
        ArrayNode everywhere = data.putArray("wetEverywhere");
        ground.wetEverywhere().forEach(its -> ground.add(everywhere, its));
    }

    private void put(ObjectNode node, FieldGround ground) {
        node.put("drainage", SeasonData.name(ground.drainage()));
        ArrayNode times = node.putArray("times");
        WetGround.of(season, ground).forEach(wet -> add(times, wet));
        ObjectNode why = node.putObject("why");
        if (ground.judged().isEmpty()) {
            season.ground().stream()
                    .flatMap(record -> record.wetDays(ground.drainage()).stream())
                    .forEach(day -> why.put(
                            Long.toString(time.day(day.date())), GroundText.why(day, ground.drainage(), figures)));
        }
    }

    private void add(ArrayNode times, WetGround wet) {
        times.addArray().add(time.seconds(wet.from())).add(time.seconds(wet.to()));
    }

    private String fields(FieldGround ground) {
        return season.fields().stream()
                .filter(field -> field.ground().equals(ground))
                .map(Field::id)
                .collect(Collectors.joining(", "));
    }

    private List<WetGround> wetEverywhere() {
        return season.fields().stream()
                .map(Field::ground)
                .distinct()
                .map(ground -> WetGround.of(season, ground))
                .reduce(GroundData::both)
                .orElse(List.of());
    }

    private static List<WetGround> both(List<WetGround> some, List<WetGround> others) {
        return some.stream()
                .flatMap(one -> others.stream()
                        .map(other -> new WetGround(later(one.from(), other.from()), sooner(one.to(), other.to()))))
                .filter(both -> both.from().isBefore(both.to()))
                .toList();
    }

    private static LocalDateTime later(LocalDateTime one, LocalDateTime other) {
        return one.isAfter(other) ? one : other;
    }

    private static LocalDateTime sooner(LocalDateTime one, LocalDateTime other) {
        return one.isBefore(other) ? one : other;
    }
}
