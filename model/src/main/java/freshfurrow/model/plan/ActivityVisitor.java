package freshfurrow.model.plan;

/**
 * What one part of the program makes of each kind of activity. A new kind has a method of its own here, so that the compiler names
 * every part that has to know of it.
 *
 * @param <T> what is made of it
 */
public interface ActivityVisitor<T> {
    T visit(Activity.Move move);

    T visit(Activity.Wait wait);

    T visit(Activity.Fill fill);

    T visit(Activity.Plant plant);

    T visit(Activity.PlantWithout planting);

    T visit(Activity.Flush flush);

    T visit(Activity.Draw draw);

    T visit(Activity.LoadCompost loading);

    T visit(Activity.Extract extract);

    T visit(Activity.Clean clean);

    T visit(Activity.Transfer transfer);

    T visit(Activity.Dump dump);

    T visit(Activity.SetUp setUp);

    T visit(Activity.CloseUp closeUp);

    /** For what planters do; it refuses the work of rigs. */
    interface OfPlanter<T> extends ActivityVisitor<T> {
        @Override
        default T visit(Activity.Draw draw) {
            throw refusal(draw);
        }

        @Override
        default T visit(Activity.LoadCompost loading) {
            throw refusal(loading);
        }

        @Override
        default T visit(Activity.Extract extract) {
            throw refusal(extract);
        }

        @Override
        default T visit(Activity.Clean clean) {
            throw refusal(clean);
        }

        @Override
        default T visit(Activity.Transfer transfer) {
            throw refusal(transfer);
        }

        @Override
        default T visit(Activity.Dump dump) {
            throw refusal(dump);
        }

        @Override
        default T visit(Activity.SetUp setUp) {
            throw refusal(setUp);
        }

        @Override
        default T visit(Activity.CloseUp closeUp) {
            throw refusal(closeUp);
        }

        private static IllegalArgumentException refusal(Activity activity) {
            return new IllegalArgumentException("no planter does this: " + activity);
        }
    }

    /** For what rigs do; it refuses the work of planters. */
    interface OfRig<T> extends ActivityVisitor<T> {
        @Override
        default T visit(Activity.Wait wait) {
            throw refusal(wait);
        }

        @Override
        default T visit(Activity.Fill fill) {
            throw refusal(fill);
        }

        @Override
        default T visit(Activity.Plant plant) {
            throw refusal(plant);
        }

        @Override
        default T visit(Activity.PlantWithout planting) {
            throw refusal(planting);
        }

        @Override
        default T visit(Activity.Flush flush) {
            throw refusal(flush);
        }

        private static IllegalArgumentException refusal(Activity activity) {
            return new IllegalArgumentException("no rig does this: " + activity);
        }
    }
}
