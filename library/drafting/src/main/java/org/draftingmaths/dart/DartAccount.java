package org.draftingmaths.dart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.draftingmaths.curve.CurvePath;
import org.draftingmaths.ledger.Entry;
import org.draftingmaths.ledger.Finding;
import org.draftingmaths.ledger.Ledger;
import org.draftingmaths.ledger.Quantity;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Reworked;
import org.draftingmaths.piece.Run;
import org.draftingmaths.piece.Step;
import org.draftingmaths.unit.Steps;

/**
 * What became of every dart: at every apex and after every operation, how much of its angle is stitched, eased, gathered, left as flare,
 * taken into a seam, not decided yet, or lost.
 *
 * <p>For each apex: {@code whole = stitched + eased + gathered + flared + seam + undecided + lost}. The whole is what the darts of
 * the apex had at the start, and grows by every wedge that is taken out there. Nothing may be lost; less than nothing lost is an angle
 * counted twice.
 *
 * <p>An apex is known again by the names of its darts, by what an operation's ledger says it moved, and by where it lies; so an operation may
 * also be a piece drawn anew by hand, with an empty ledger. Double-pointed darts have an apex at either point.
 *
 * <pre>{@code
 * Reworked moved = Darts.rotateShare(front, "waist dart", Spot.on("side seam", 60), "side dart", 0.5);
 * Reworked left = Darts.leave(moved.piece(), "waist dart", Use.Kind.GATHERS);
 * List<Finding> lost = DartAccount.of(front, List.of(moved, left)).findings(1e-9);
 * }</pre>
 *
 * @param lines one for each apex after each operation, and first for each apex as it is found
 */
public record DartAccount(List<Line> lines) {

    /** Copies the list. */
    public DartAccount {
        lines = List.copyOf(lines);
    }

    /** What becomes of an angle. */
    public enum Fate {
        /** Sewn shut as a dart. */
        STITCHED("stitched"),
        /** Held in as ease. */
        EASED("eased"),
        /** Gathered. */
        GATHERED("gathered"),
        /** Hanging free. */
        FLARED("left as flare"),
        /** In the difference of two edges that are sewn together. */
        SEAM("in a seam"),
        /** Open, and no use decided. */
        UNDECIDED("not decided yet");

        private final String words;

        Fate(String words) {
            this.words = words;
        }
    }

    /**
     * One apex after one operation.
     *
     * @param step which operation, counted from 1; 0 for the piece as it is found
     * @param what the operation in words
     * @param apex the apex in words, by the darts it has had
     * @param whole all there is at the apex, in radians
     * @param spent for each fate that has some of it, how much, in radians
     */
    public record Line(int step, String what, String apex, double whole, Map<Fate, Double> spent) implements Entry {
        /** Copies the map. */
        public Line {
            spent = Map.copyOf(spent);
        }

        /**
         * What is accounted for nowhere.
         *
         * @return the angle in radians; negative when some is counted twice
         */
        public double lost() {
            return whole
                    - spent.values().stream().mapToDouble(Double::doubleValue).sum();
        }

        /**
         * How much has one fate.
         *
         * @param fate the fate
         * @return the angle in radians, 0 when none has it
         */
        public double spent(Fate fate) {
            return spent.getOrDefault(fate, 0.0);
        }

        @Override
        public String sentence(Steps steps) {
            String fates = spent.keySet().stream()
                    .sorted()
                    .map(fate -> Quantity.ANGLE.print(spent(fate), steps) + " " + fate.words)
                    .collect(Collectors.joining(", "));
            return String.format(
                    Locale.ROOT,
                    "%s: of %s at the apex of %s, %s; %s.",
                    step == 0 ? "At first" : "After step " + step,
                    Quantity.ANGLE.print(whole, steps),
                    apex,
                    fates.isEmpty() ? "none is left open" : fates,
                    ending(steps));
        }

        private String ending(Steps steps) {
            if (Math.abs(lost()) < SEEN) {
                return "nothing is lost";
            }
            return Quantity.ANGLE.print(Math.abs(lost()), steps) + (lost() > 0 ? " are LOST" : " are COUNTED TWICE");
        }
    }

    /** A loss smaller than this, in radians, does not show in a sentence: a hundredth of a degree. */
    private static final double SEEN = Math.toRadians(0.01);

    /** How far apart in mm two apexes may lie, drawn by hand, and be one. */
    private static final double BY_HAND = 1;

    /**
     * The account of a list of operations, each done to the piece that the one before has left.
     *
     * @param start the piece before the first of them
     * @param operations the operations in order
     * @return the account
     */
    public static DartAccount of(Piece start, List<Reworked> operations) {
        List<Book> books = opened(start);
        List<Line> lines = new ArrayList<>(lines(books, start, 0, "the piece as it is found"));
        Piece before = start;
        for (int i = 0; i < operations.size(); i++) {
            Reworked done = operations.get(i);
            books = carried(books, before, done);
            String what = done.ledger().entries().isEmpty()
                    ? "drawn by hand"
                    : done.ledger().entries().get(0).sentence(Steps.DEFAULT);
            lines.addAll(lines(books, done.piece(), i + 1, what));
            before = done.piece();
        }
        return new DartAccount(lines);
    }

    /**
     * Each operation that loses part of a dart, or counts it twice.
     *
     * @param tolerance how far in radians the angles may miss the whole by rounding or drawing
     * @return the findings in order
     */
    public List<Finding> findings(double tolerance) {
        if (!(tolerance >= 0 && Double.isFinite(tolerance))) {
            throw new IllegalArgumentException("A tolerance is 0 rad or more: " + tolerance + " rad.");
        }
        Map<String, Double> known = new TreeMap<>();
        List<Finding> found = new ArrayList<>();
        for (Line line : lines) {
            double lost = line.lost();
            double before = Optional.ofNullable(known.put(line.apex(), lost)).orElse(0.0);
            if (Math.abs(lost - before) > tolerance) {
                found.add(new Finding(
                        Finding.Kind.DART_LOST,
                        "the apex of " + line.apex() + " after step " + line.step() + " (" + line.what() + ")",
                        Quantity.ANGLE,
                        line.whole() - lost,
                        line.whole() - before,
                        tolerance));
            }
        }
        return found;
    }

    /**
     * The account as a ledger, to be printed or shown.
     *
     * @return a ledger of its lines
     */
    public Ledger ledger() {
        return new Ledger(List.copyOf(lines));
    }

    /**
     * The account of one apex.
     *
     * @param apex it in words, by the darts it had at first
     * @param names the darts it has now
     * @param whole all there is at it, in radians
     * @param seam what was taken into seams, in radians
     */
    private record Book(String apex, Set<String> names, double whole, double seam) {

        Book with(Set<String> now) {
            return new Book(apex, now, whole, seam);
        }

        Book grown(double by) {
            return new Book(apex, names, whole + by, seam);
        }

        Book sewn(double by) {
            return new Book(apex, names, whole, seam + by);
        }
    }

    private static List<Book> opened(Piece piece) {
        List<Book> books = new ArrayList<>();
        List<Apexes.Share> left = new ArrayList<>(Apexes.of(piece));
        while (!left.isEmpty()) {
            Vector2D apex = left.get(0).apex();
            List<Apexes.Share> here = left.stream()
                    .filter(share -> share.apex().distance(apex) <= CurvePath.JOINT)
                    .toList();
            left.removeAll(here);
            books.add(book(here));
        }
        return books;
    }

    private static Book book(List<Apexes.Share> shares) {
        Set<String> names = shares.stream().map(Apexes.Share::dart).collect(Collectors.toCollection(TreeSet::new));
        String apex = names.stream().map(name -> "'" + name + "'").collect(Collectors.joining(" and "));
        return new Book(
                apex, names, shares.stream().mapToDouble(Apexes.Share::angle).sum(), 0);
    }

    /** The books after an operation: every dart there now is entered with the apex it belongs to. */
    private static List<Book> carried(List<Book> books, Piece before, Reworked done) {
        List<Book> told = books.stream().map(book -> told(book, done.ledger())).toList();
        Map<Integer, Set<String>> now = new TreeMap<>();
        List<Apexes.Share> strangers = new ArrayList<>();
        for (Apexes.Share share : Apexes.of(done.piece())) {
            OptionalInt index = bookOf(told, before, done, share);
            if (index.isPresent()) {
                now.computeIfAbsent(index.getAsInt(), i -> new TreeSet<>()).add(share.dart());
            } else {
                strangers.add(share);
            }
        }
        List<Book> after = new ArrayList<>();
        for (int i = 0; i < told.size(); i++) {
            after.add(told.get(i).with(now.getOrDefault(i, Set.of())));
        }
        strangers.forEach(share -> after.add(book(List.of(share))));
        return after;
    }

    /** What the ledger of an operation says of an apex: wedges taken out there, angles taken into seams. */
    private static Book told(Book book, Ledger ledger) {
        double out = ledger.only(Step.TakenOut.class).stream()
                .filter(taken -> book.names().contains(taken.first().name()))
                .mapToDouble(DartAccount::wedge)
                .sum();
        double sewn = ledger.only(IntoSeam.class).stream()
                .filter(taken -> book.names().contains(taken.dart()))
                .mapToDouble(IntoSeam::angle)
                .sum();
        return book.grown(out).sewn(sewn);
    }

    /** The angle at the far end of a panel that was taken out. */
    private static double wedge(Step.TakenOut taken) {
        Vector2D one = inwards(taken, taken.first(), Leg.AFTER);
        Vector2D other = inwards(taken, taken.second(), Leg.BEFORE);
        return Math.abs(Math.atan2(one.signedArea(other), one.dot(other)));
    }

    private static Vector2D inwards(Step.TakenOut taken, Opening opening, Leg leg) {
        Border border = new Border.OfLeg(opening.name(), leg);
        Run run = taken.lost().ring().stream()
                .filter(each -> each.border().equals(border))
                .findFirst()
                .orElseThrow();
        CurvePath placed = opening.base(leg).transformed(run.motion());
        return placed.start().vectorTo(placed.end());
    }

    private static OptionalInt bookOf(List<Book> books, Piece before, Reworked done, Apexes.Share share) {
        List<Apexes.Share> were = Apexes.of(before);
        Optional<String> known = were.stream()
                .map(Apexes.Share::dart)
                .filter(share.dart()::equals)
                .findFirst()
                .or(() -> movedFrom(done.ledger(), share.dart()))
                .or(() -> cutTo(done.ledger(), share.dart(), were))
                .or(() -> at(were, share.apex(), BY_HAND));
        return IntStream.range(0, books.size())
                .filter(i -> known.filter(books.get(i).names()::contains).isPresent())
                .findFirst();
    }

    private static Optional<String> movedFrom(Ledger ledger, String dart) {
        return ledger.only(DartMoved.class).stream()
                .filter(moved -> moved.to().equals(dart))
                .map(DartMoved::from)
                .findFirst();
    }

    /** The dart to whose apex a slash of this name was cut. */
    private static Optional<String> cutTo(Ledger ledger, String slash, List<Apexes.Share> were) {
        return ledger.only(Step.Cut.class).stream()
                .filter(cut -> cut.opening().equals(slash))
                .findFirst()
                .flatMap(cut -> at(were, cut.along().end(), CurvePath.JOINT));
    }

    private static Optional<String> at(List<Apexes.Share> shares, Vector2D apex, double near) {
        return shares.stream()
                .filter(share -> share.apex().distance(apex) <= near)
                .min(Comparator.comparingDouble(share -> share.apex().distance(apex)))
                .map(Apexes.Share::dart);
    }

    private static List<Line> lines(List<Book> books, Piece piece, int step, String what) {
        List<Apexes.Share> shares = Apexes.of(piece);
        return books.stream()
                .map(book -> new Line(step, what, book.apex(), book.whole(), spent(book, shares)))
                .toList();
    }

    private static Map<Fate, Double> spent(Book book, List<Apexes.Share> shares) {
        Map<Fate, Double> spent = new TreeMap<>();
        shares.stream()
                .filter(share -> book.names().contains(share.dart()))
                .forEach(share -> spent.merge(share.fate(), share.angle(), Double::sum));
        if (book.seam() > 0) {
            spent.put(Fate.SEAM, book.seam());
        }
        return spent;
    }
}
