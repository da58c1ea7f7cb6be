package freshfurrow.desk.server;

/** A part of the desk: it says what it answers. */
@FunctionalInterface
public interface Part {
    void answers(Routes routes);
}
