package freshfurrow.model.example;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.ArgumentsProvider;
import org.junit.jupiter.params.provider.ArgumentsSource;
import org.junit.jupiter.params.support.ParameterDeclarations;

/** Seeds of the random seasons that a test is run with, one after the other: the first of them, as many as {@link Tries} says. */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@ArgumentsSource(Seeds.First.class)
public @interface Seeds {
    /** All seeds. */
    long[] value();

    /** Those that are run. */
    final class First implements ArgumentsProvider {
        @Override
        public Stream<? extends Arguments> provideArguments(ParameterDeclarations parameters, ExtensionContext test) {
            long[] all = test.getRequiredTestMethod().getAnnotation(Seeds.class).value();
            return Arrays.stream(all).limit(Tries.of(all.length)).mapToObj(Arguments::of);
        }
    }
}
