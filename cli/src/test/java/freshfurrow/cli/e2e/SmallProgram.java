package freshfurrow.cli.e2e;

/** Stands in for freshfurrow where a test builds it in no time. */
final class SmallProgram {
    private SmallProgram() {}

    /**
     * Prints its arguments.
     *
     * @param args any
     */
    public static void main(String[] args) {
        System.out.println("started with " + String.join(" ", args));
    }
}
