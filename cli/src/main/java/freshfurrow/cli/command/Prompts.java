package freshfurrow.cli.command;

import freshfurrow.model.text.Unseen;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;

/** Questions and answers, a line each. */
final class Prompts {
    private static final int LONGEST_LINE = 10_000;

    private final BufferedReader in;
    private final PrintWriter out;

    Prompts(BufferedReader in, PrintWriter out) {
        this.in = in;
        this.out = out;
    }

    /** Thrown when there is no answer any more. */
    static final class EndOfInput extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    void say(String line) {
        Output.print(out, List.of(line));
    }

    /**
     * An answer; the default when none is typed.
     *
     * @param usual the default
     * @throws EndOfInput when input has ended
     */
    String answerOr(String question, String usual) {
        String answer = answer(question, usual);
        return answer.isEmpty() ? usual : answer;
    }

    /**
     * An answer without blanks around it; empty when none is typed.
     *
     * @param usual the default that is shown; empty when there is none
     * @throws EndOfInput when input has ended
     */
    String answer(String question, String usual) {
        out.print(Unseen.marked(question + (usual.isEmpty() ? " " : " [" + usual + "] ")));
        out.flush();
        try {
            String line = in.readLine();
            if (line == null) {
                out.println();
                out.flush();
                throw new EndOfInput();
            }
            String answer = line.replace("\uFEFF", "").strip();
            if (answer.length() > LONGEST_LINE) {
                say("  That is too long for an answer.");
                return answer(question, usual);
            }
            return answer;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
