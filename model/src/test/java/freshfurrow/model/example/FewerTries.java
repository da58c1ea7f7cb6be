package freshfurrow.model.example;

import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Method;
import java.util.Optional;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/** Runs the share of the tries of every property that {@link Tries} names; jqwik finds it by its name in META-INF/services. */
public final class FewerTries implements AroundPropertyHook {
    @Override
    public boolean appliesTo(Optional<AnnotatedElement> element) {
        return element.filter(Method.class::isInstance).isPresent();
    }

    @Override
    public PropagationMode propagateTo() {
        return PropagationMode.ALL_DESCENDANTS;
    }

    @Override
    public PropertyExecutionResult aroundProperty(PropertyLifecycleContext context, PropertyExecutor property)
            throws Throwable {
        context.attributes().tries().ifPresent(all -> context.attributes().setTries(Tries.of(all)));
        return property.execute();
    }
}
