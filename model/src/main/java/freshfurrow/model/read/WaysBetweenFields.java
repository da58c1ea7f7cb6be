package freshfurrow.model.read;

import freshfurrow.model.season.Distances;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which fields a machine can be driven to when no single drive may take longer than so much: those that it reaches at once, and from
 * there on. Fields that can be reached from one another stand together, and that is found out once for all machines that drive alike.
 */
final class WaysBetweenFields {
    /**
     * What a machine's drives are like. Machines with equal ones reach the same fields from the same place.
     *
     * @param getReadyS to fold and unfold, s
     * @param speedMPerS on roads, above 0
     * @param longestS that a drive may take, with getting ready, s
     */
    record Drive(double getReadyS, double speedMPerS, int longestS) {
        private boolean isLongEnough(double metres) {
            return getReadyS + metres / speedMPerS <= longestS;
        }
    }

    private final Drive drive;
    private final Distances distances;
    private final List<List<String>> together = new ArrayList<>();
    private final Map<String, Set<String>> reachedFrom = new HashMap<>();

    WaysBetweenFields(List<String> fields, Drive drive, Distances distances) {
        this.drive = drive;
        this.distances = distances;
        List<String> left = new ArrayList<>(fields);
        while (!left.isEmpty()) {
            together.add(takeReached(left));
        }
    }

    /** Takes those fields out that are reached from the last one. */
    private List<String> takeReached(List<String> left) {
        List<String> reached = new ArrayList<>(List.of(left.remove(left.size() - 1)));
        for (int i = 0; i < reached.size() && !left.isEmpty(); i++) {
            String from = reached.get(i);
            left.removeIf(field -> isOneDrive(from, field) && reached.add(field));
        }
        return reached;
    }

    /** The fields that are reached from a place. */
    Set<String> from(String place) {
        return reachedFrom.computeIfAbsent(place, this::reached);
    }

    private Set<String> reached(String place) {
        Set<String> reached = new HashSet<>();
        together.stream()
                .filter(fields -> fields.stream().anyMatch(field -> isOneDrive(place, field)))
                .forEach(reached::addAll);
        return reached;
    }

    boolean isOneDrive(String from, String to) {
        if (drive.isLongEnough(distances.atMost(from, to))) {
            return true;
        }
        return drive.isLongEnough(distances.atLeast(from, to)) && drive.isLongEnough(distances.metres(from, to));
    }
}
