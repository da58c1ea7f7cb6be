package freshfurrow.model.plan;

import java.util.Optional;
import java.util.function.Function;

/**
 * A key of a record in a plan file.
 *
 * @param of the record's value under it
 * @param whenMissing the value for which the key is left out; empty when it is always there
 */
record JsonKey<R, T>(String name, Function<R, T> of, JsonForm<T> form, Optional<T> whenMissing) {
    static <R, T> JsonKey<R, T> key(String name, Function<R, T> of, JsonForm<T> form) {
        return new JsonKey<>(name, of, form, Optional.empty());
    }

    /** A key that may be missing. */
    static <R, T> JsonKey<R, Optional<T>> perhaps(String name, Function<R, Optional<T>> of, JsonForm<T> form) {
        return new JsonKey<>(
                name,
                of,
                new JsonForm<>(
                        value -> form.tree().apply(value.orElseThrow()),
                        (place, key) -> Optional.of(form.reader().read(place, key))),
                Optional.of(Optional.empty()));
    }

    boolean isOptional() {
        return whenMissing.isPresent();
    }
}
