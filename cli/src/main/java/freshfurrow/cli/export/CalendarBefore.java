package freshfurrow.cli.export;

import java.io.IOException;
import java.io.StringReader;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.LastModified;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Sequence;
import net.fortuna.ical4j.model.property.immutable.ImmutableStatus;

/**
 * A calendar that a new one takes the place of. A calendar program takes an entry with a known UID for a revision when its
 * SEQUENCE is higher (RFC 5545, section 3.8.7.4; RFC 5546, section 2.1.5), so the sequences are carried on from it.
 *
 * @param entries by UID, in the order of the file
 */
public record CalendarBefore(Map<String, Entry> entries) {
    static final CalendarBefore NONE = new CalendarBefore(Map.of());

    private static final Set<String> REVISION = Set.of(Property.SEQUENCE, Property.DTSTAMP, Property.LAST_MODIFIED);

    /** An entry and how often it was revised. */
    record Entry(VEvent event, int sequence) {}

    public CalendarBefore {
        entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }

    /** Reads a calendar that was written by {@link CalendarFile}; empty when the text is none of those. */
    public static Optional<CalendarBefore> read(String text) {
        Calendar calendar;
        try {
            calendar = new CalendarBuilder().build(new StringReader(text));
        } catch (IOException | ParserException | RuntimeException e) {
            return Optional.empty(); // the library throws whatever its parsing of dates and figures throws
        }
        Optional<ProdId> product = calendar.getProperty(Property.PRODID);
        if (product.isEmpty() || !CalendarFile.PRODUCT.equals(product.get().getValue())) {
            return Optional.empty();
        }
        Map<String, Entry> entries = new LinkedHashMap<>();
        List<VEvent> events = calendar.getComponents(Component.VEVENT);
        for (VEvent event : events) {
            Optional<Sequence> sequence = event.getProperty(Property.SEQUENCE);
            event.getUid()
                    .ifPresent(uid -> entries.put(
                            uid.getValue(),
                            new Entry(
                                    event, sequence.map(Sequence::getSequenceNo).orElse(0))));
        }
        return Optional.of(new CalendarBefore(entries));
    }

    /** The new entries with what tells their revision, then those that are no more, cancelled. */
    List<VEvent> revise(Map<String, VEvent> now, LocalDate seasonFirst) {
        List<VEvent> all = new ArrayList<>();
        now.forEach((uid, event) -> {
            Entry before = entries.get(uid);
            int sequence = before == null ? 0 : before.sequence + (isSame(before.event, event) ? 0 : 1);
            all.add(stamped(event, sequence, seasonFirst));
        });
        entries.forEach((uid, before) -> {
            if (!now.containsKey(uid)) {
                all.add(cancelled(before, seasonFirst));
            }
        });
        return all;
    }

    private static VEvent cancelled(Entry before, LocalDate seasonFirst) {
        VEvent event = before.event.copy();
        boolean isNews = !event.getProperty(Property.STATUS)
                .map(Property::getValue)
                .equals(Optional.of(ImmutableStatus.VALUE_CANCELLED));
        event.removeAll(Property.STATUS, Property.SEQUENCE, Property.DTSTAMP, Property.LAST_MODIFIED);
        event.add(ImmutableStatus.VEVENT_CANCELLED);
        return stamped(event, before.sequence + (isNews ? 1 : 0), seasonFirst);
    }

    /**
     * The same plan gives the same file, so the stamp is no reading of a clock: it is the season's first midnight, and a
     * minute later with each revision, for programs that look at stamps and not at sequences.
     */
    private static VEvent stamped(VEvent event, int sequence, LocalDate seasonFirst) {
        Instant stamp = seasonFirst.atStartOfDay().plusMinutes(sequence).toInstant(ZoneOffset.UTC);
        event.add(new DtStamp(stamp));
        event.add(new LastModified(stamp));
        event.add(new Sequence(sequence));
        return event;
    }

    private static boolean isSame(VEvent a, VEvent b) {
        return content(a).equals(content(b));
    }

    private static Map<String, String> content(VEvent event) {
        List<Property> properties = event.getProperties();
        return properties.stream()
                .filter(property -> !REVISION.contains(property.getName()))
                .collect(Collectors.toMap(
                        Property::getName, Property::toString, (one, other) -> one + other, TreeMap::new));
    }
}
