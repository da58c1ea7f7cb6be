package freshfurrow.model.read;

import freshfurrow.model.read.tree.FileProblem;
import freshfurrow.model.read.tree.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Supplier;

/** Gathers problems while files are read. */
final class Problems {
    private final List<Supplier<Problem>> found = new ArrayList<>();
    private final List<String> files;

    /** @param files names of the files whose problems come first, in order; others follow as they are first complained of */
    Problems(List<String> files) {
        this.files = new ArrayList<>(files);
    }

    void add(Place place, String reason, String remedy) {
        add(place, reason, () -> remedy);
    }

    /** @param remedy asked for when all is read, as it may tell what is written elsewhere */
    void add(Place place, String reason, Supplier<String> remedy) {
        if (!files.contains(place.file())) {
            files.add(place.file());
        }
        OptionalInt line = place.line() > 0 ? OptionalInt.of(place.line()) : OptionalInt.empty();
        found.add(() -> new Problem(place.file(), line, place.path(), reason, remedy.get()));
    }

    void add(FileProblem problem) {
        add(problem.place(), problem.reason(), problem.remedy());
    }

    boolean none() {
        return found.isEmpty();
    }

    int count() {
        return found.size();
    }

    /** Each once, by file, then by line. */
    List<Problem> sorted() {
        List<Problem> sorted =
                new ArrayList<>(found.stream().map(Supplier::get).distinct().toList());
        sorted.sort(Comparator.<Problem>comparingInt(problem -> files.indexOf(problem.file()))
                .thenComparingInt(problem -> problem.line().orElse(0)));
        return sorted;
    }
}
