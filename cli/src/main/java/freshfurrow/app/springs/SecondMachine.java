package freshfurrow.app.springs;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import freshfurrow.app.input.GivenSeason;
import freshfurrow.app.output.OutFiles;
import freshfurrow.model.files.IfThere;
import freshfurrow.model.files.NewFile;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A variant of a season with one more rig, just like one that it has. */
public final class SecondMachine {
    private SecondMachine() {}

    /**
     * Writes the variant beside the season file, as {@code second-R1.json}. One that is there already is taken as it is, since people
     * may have changed it.
     *
     * @param rig id of the rig that it is like
     * @param asWritten the rig's keys, as the season file has them
     */
    public static VariantFile like(GivenSeason season, String rig, Map<?, ?> asWritten) {
        Path file = season.folder().resolve("second-" + rig + ".json");
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return VariantFile.there(file);
        }
        ObjectNode patch = JsonNodeFactory.instance.objectNode();
        ObjectNode second = patch.putObject("rigs").putObject(rig + "-second");
        asWritten.forEach((key, value) -> {
            if (value instanceof List<?> items) {
                ArrayNode list = second.putArray(String.valueOf(key));
                items.forEach(item -> list.add(String.valueOf(item)));
            } else {
                second.put(String.valueOf(key), String.valueOf(value));
            }
        });
        NewFile made = NewFile.of(file, patch.toPrettyString() + "\n", IfThere.KEEP);
        OutFiles.MADE.writeAll(List.of(made));
        return new VariantFile(file, Optional.of(made));
    }
}
