package org.draftingmaths.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Properties;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.draftingmaths.check.Checks;
import org.draftingmaths.check.Severity;
import org.draftingmaths.check.Weights;
import org.draftingmaths.exchange.AnyDraft;
import org.draftingmaths.exchange.FindingsJson;
import org.draftingmaths.exchange.Limits;
import org.draftingmaths.exchange.Saved;
import org.draftingmaths.exchange.SeamLists;
import org.draftingmaths.exchange.SvgOptions;
import org.draftingmaths.exchange.Traced;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.suppose.Suppose;
import org.draftingmaths.suppose.Supposed;
import org.draftingmaths.unit.Length;
import org.draftingmaths.unit.Steps;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * Checks a draft: {@code java -jar drafting-maths-command.jar DRAFT [SEAMS]}.
 *
 * <p>Findings go to the standard output, notes and refusals to the standard error, both in UTF-8. The exit code is 0 when nothing was
 * found, 1 when something was, 2 when a file or an option says something that cannot be.
 */
@Command(
        name = "drafting-maths-command",
        mixinStandardHelpOptions = true,
        versionProvider = Verify.Version.class,
        description = "Walks the seams of a draft and says what is wrong with it.",
        footer = {
            "",
            "Lengths are written with their unit: 0.5 mm, 1/16 in.",
            "Exit code: 0 nothing found, 1 findings, 2 bad input, with the reason on the standard error."
        })
public final class Verify implements Callable<Integer> {

    static final int NOTHING_FOUND = 0;
    static final int FINDINGS = 1;
    static final int BAD_INPUT = 2;

    /** The version as the build wrote it beside the classes. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() throws IOException {
            Properties build = new Properties();
            try (InputStream in = Verify.class.getResourceAsStream("build.properties")) {
                build.load(in);
            }
            return new String[] {"Drafting Maths " + build.getProperty("version")};
        }
    }

    /** How the findings are written. */
    enum Form {
        /** A sentence for each. */
        TEXT,
        /** For other programs. */
        JSON
    }

    @Parameters(
            index = "0",
            paramLabel = "DRAFT",
            description = "A draft in JSON, or a drawing of its outlines in SVG.")
    private Path draft;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "SEAMS",
            description = "Which edges are sewn together, in CSV with the columns edge, mate and ease."
                    + " It takes the place of the seams that the draft declares.")
    private Path seams;

    @Option(
            names = "--suppose",
            description =
                    "Suppose from the shapes what is not declared: darts, seams, folds. This is done without asking when"
                            + " neither the draft nor a list says what is sewn to what.")
    private boolean suppose;

    @Option(
            names = "--supposed",
            paramLabel = "FILE",
            description = "Write the supposed seams to this file as a list, to be corrected and given as SEAMS"
                    + " together with --suppose.")
    private Path supposedTo;

    @Option(
            names = "--tolerance",
            paramLabel = "LENGTH",
            description = "How far lengths that should be equal may lie apart; default ${DEFAULT-VALUE}.")
    private Length tolerance = Length.mm(Checks.SEAM_TOLERANCE);

    @Option(
            names = "--slight",
            paramLabel = "LENGTH",
            description = "Up to how far off lengths that are sewn together are only slightly wrong; default"
                    + " ${DEFAULT-VALUE}, which many who sew take.")
    private Length slight = Length.mm(Weights.COMMON.slight());

    @Option(
            names = "--unit",
            paramLabel = "LENGTH",
            description = "How long one user unit of the SVG is, when the file does not state its scale: 1 mm, or"
                    + " 0.264583 mm where 96 make an inch.")
    private Length unit;

    @Option(
            names = "--corner",
            paramLabel = "DEGREES",
            defaultValue = "30",
            description = "By how much an outline in SVG turns where one edge ends; default ${DEFAULT-VALUE}.")
    private double corner;

    @Option(
            names = "--gap",
            paramLabel = "LENGTH",
            description = "How far the ends of lines in SVG may lie apart and still meet; default ${DEFAULT-VALUE}.")
    private Length gap = Length.mm(SvgOptions.DEFAULT.gap());

    @Option(
            names = "--as",
            paramLabel = "FORM",
            defaultValue = "TEXT",
            description = "How findings are written: ${COMPLETION-CANDIDATES}; default ${DEFAULT-VALUE}.")
    private Form form;

    @Option(
            names = "--to",
            paramLabel = "FILE",
            description = "Write the findings to this file, whole or not at all, instead of the standard output.")
    private Path to;

    @Option(
            names = "--seconds",
            paramLabel = "SECONDS",
            defaultValue = "60",
            description = "How long reading a file, and how long checking, may take; default ${DEFAULT-VALUE}.")
    private int seconds;

    private final PrintWriter out;
    private final PrintWriter err;

    private Verify(PrintWriter out, PrintWriter err) {
        this.out = out;
        this.err = err;
    }

    /**
     * Runs the command and ends the process with its exit code.
     *
     * @param args what stands behind the command
     */
    public static void main(String[] args) {
        System.exit(run(args, utf8(System.out), utf8(System.err)));
    }

    private static PrintWriter utf8(PrintStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
    }

    /** Whatever happens, 1 means findings. */
    static int run(String[] args, PrintWriter out, PrintWriter err) {
        try {
            return new CommandLine(new Verify(out, err))
                    .setOut(out)
                    .setErr(err)
                    .setCaseInsensitiveEnumValuesAllowed(true)
                    .registerConverter(Length.class, Verify::length)
                    .setParameterExceptionHandler((wrong, arguments) -> refused(err, wrong))
                    .setExecutionExceptionHandler((broken, line, parsed) -> refused(err, broken))
                    .execute(args);
        } catch (OutOfMemoryError | StackOverflowError exhausted) {
            return refused(err, exhausted);
        } finally {
            out.flush();
            err.flush();
        }
    }

    private static Length length(String text) {
        try {
            return Length.parse(text);
        } catch (IllegalArgumentException refusal) {
            throw new CommandLine.TypeConversionException(refusal.getMessage());
        }
    }

    private static int refused(PrintWriter err, Throwable reason) {
        err.println(reason instanceof IllegalArgumentException ? reason.getMessage() : said(reason));
        return BAD_INPUT;
    }

    private static String said(Throwable reason) {
        return reason.getMessage() == null
                ? reason.getClass().getSimpleName()
                : reason instanceof RuntimeException || reason instanceof Refusal
                        ? reason.getMessage()
                        : reason.getClass().getSimpleName() + ": " + reason.getMessage();
    }

    /** What is wrong with the request, for the standard error. */
    private static final class Refusal extends Exception {
        private static final long serialVersionUID = 1L;

        Refusal(String reason) {
            super(reason);
        }
    }

    @Override
    public Integer call() throws Exception {
        Duration limit = limit();
        Limits limits = Limits.DEFAULT.within(limit);
        Traced traced = AnyDraft.read(draft, options(), limits);
        boolean supposing = suppose
                || supposedTo != null
                || (seams == null && traced.draft().seams().isEmpty());
        return supposing ? supposed(traced, limits, limit) : declared(traced, limits, limit);
    }

    private int declared(Traced traced, Limits limits, Duration limit) throws Exception {
        Draft whole = seams == null ? traced.draft() : SeamLists.read(seams, traced.draft(), limits);
        List<Finding> findings = new ArrayList<>(traced.findings());
        findings.addAll(within(limit, () -> Checks.all(whole, tolerance.mm())));
        notes(traced.notes());
        write(
                form == Form.JSON
                        ? FindingsJson.text(whole.name(), findings, weights(), traced.notes(), Steps.DEFAULT)
                        : sentences(findings));
        return findings.isEmpty() ? NOTHING_FOUND : FINDINGS;
    }

    /** A list of seams names the edges as they are when the supposed darts are laid in. */
    private int supposed(Traced traced, Limits limits, Duration limit) throws Exception {
        Draft darted = within(limit, () -> Suppose.darts(traced.draft(), tolerance.mm()));
        Draft whole = seams == null ? traced.draft() : SeamLists.read(seams, darted, limits);
        Supposed supposed = within(limit, () -> Suppose.of(whole, tolerance.mm()));
        List<Finding> findings = new ArrayList<>(traced.findings());
        findings.addAll(supposed.findings());
        if (supposedTo != null) {
            Saved.text(supposedTo, SeamLists.text(supposed));
        }
        notes(traced.notes());
        write(
                form == Form.JSON
                        ? FindingsJson.text(
                                whole.name(),
                                supposed.suppositions(),
                                findings,
                                weights(),
                                traced.notes(),
                                Steps.DEFAULT)
                        : suppositions(supposed) + sentences(findings));
        return findings.isEmpty() ? NOTHING_FOUND : FINDINGS;
    }

    private Weights weights() {
        return Weights.COMMON.slight(slight.mm());
    }

    private Duration limit() {
        if (seconds < 1) {
            throw new IllegalArgumentException("--seconds is 1 or more: " + seconds + ".");
        }
        return Duration.ofSeconds(seconds);
    }

    private SvgOptions options() {
        OptionalDouble stated = unit == null ? OptionalDouble.empty() : OptionalDouble.of(unit.mm());
        return new SvgOptions(stated, Math.toRadians(corner), gap.mm(), SvgOptions.DEFAULT.arcs());
    }

    /** A stranger's outline may be more than can be checked in any useful time; the thread does not outlive the command. */
    private static <T> T within(Duration limit, Callable<T> check) throws Exception {
        FutureTask<T> task = new FutureTask<>(check);
        Thread thread = new Thread(task, "check");
        thread.setDaemon(true);
        thread.start();
        try {
            return task.get(limit.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException late) {
            throw new Refusal("Checking took longer than the " + limit.toSeconds() + " seconds of --seconds.");
        } catch (ExecutionException broken) {
            throw new Refusal("The draft cannot be checked: " + said(broken.getCause()));
        }
    }

    private void notes(List<String> notes) {
        notes.forEach(note -> err.println("Note: " + note));
    }

    private void write(String text) throws IOException {
        if (to == null) {
            out.print(text);
        } else {
            Saved.text(to, text);
        }
    }

    private static String suppositions(Supposed supposed) {
        StringBuilder text = new StringBuilder("Supposed from the shapes, where nothing is declared:\n");
        supposed.suppositions()
                .forEach(each -> text.append(each.sentence(Steps.DEFAULT)).append('\n'));
        return text.append(supposed.suppositions().isEmpty() ? "Nothing.\n\n" : "\n")
                .toString();
    }

    /** The gravest first; where all are faults, no word of it. */
    private String sentences(List<Finding> findings) {
        StringBuilder text = new StringBuilder();
        List<String> counts = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            List<Finding> those = weights().only(findings, severity);
            those.forEach(finding -> text.append(finding.sentence(Steps.DEFAULT))
                    .append(weighed(severity))
                    .append('\n'));
            if (!those.isEmpty()) {
                counts.add(those.size() + " " + severity.words());
            }
        }
        boolean faultsOnly = weights().only(findings, Severity.FAULT).size() == findings.size();
        String count = findings.size() == 1 ? "1 finding" : findings.size() + " findings";
        return text.append(
                        findings.isEmpty()
                                ? "Nothing found."
                                : count + (faultsOnly ? "" : ": " + String.join(", ", counts)) + ".")
                .append('\n')
                .toString();
    }

    private String weighed(Severity severity) {
        return switch (severity) {
            case FAULT -> "";
            case SLIGHT -> " Slight: many who sew take up to " + Quantity.LENGTH.printFinely(slight.mm()) + ".";
            case TO_JUDGE -> " To judge: it can be sewn.";
        };
    }
}
