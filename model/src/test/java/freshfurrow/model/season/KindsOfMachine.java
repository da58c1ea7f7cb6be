package freshfurrow.model.season;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** All records that are a {@link Machine}, for tests that must not forget one. */
public final class KindsOfMachine {
    private KindsOfMachine() {}

    public static List<Class<?>> all() {
        return kinds(Machine.class).toList();
    }

    private static Stream<Class<?>> kinds(Class<?> type) {
        return type.isSealed()
                ? Arrays.stream(type.getPermittedSubclasses()).flatMap(KindsOfMachine::kinds)
                : Stream.of(type);
    }
}
