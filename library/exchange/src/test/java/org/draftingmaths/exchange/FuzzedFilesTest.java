package org.draftingmaths.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.fail;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.Stream;
import org.draftingmaths.check.Checks;
import org.draftingmaths.ledger.DraftingException;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Paper;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.unit.Steps;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Spoiled files: cut off, bits flipped, parts doubled or left out, figures made odd, nested deeply. Each ends in a draft that can be
 * drawn and checked or in a {@link FileException}, within the time limit. Ten thousand files; {@code -Dfuzz=100000} for more.
 */
class FuzzedFilesTest {

    private static final int FILES = Integer.getInteger("fuzz", 10_000) / 4;
    private static final Duration LIMIT = Duration.ofSeconds(5);
    private static final Limits LIMITS = new Limits(1 << 20, 100_000, 50, 500, LIMIT);

    private static final String SVG = """
            <?xml version="1.0" encoding="UTF-8"?>
            <!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "none.dtd">
            <svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="300mm" viewBox="0 0 400 300">
            <g id="front" transform="rotate(3) scale(1.1)"><title>a &amp; b</title>
            <line id="hem" class="hem" x1="10" y1="200" x2="210" y2="200"/>
            <path id="centre" class="fold" d="M10 200V20"/>
            <polyline id="side" points="210 200, 190 100, 195 60"/>
            <path id="waist" d="M10 20q 90 0 185 40"/></g>
            <path id="pocket" d="M10 10h100v60A40 60 10 0 1 60 110S10 90 10 70z M 20 20 l5 5 5-5z"/>
            <ellipse id="patch" cx="300" cy="200" rx="20" ry="2e1"/>
            <rect id="tab" x="1in" width="30" height="5mm" rx="2"/>
            </svg>
            """;

    private static final String CSV = """
            # seams
            seam,edge,edge direction,mate,mate direction,interval,ease,how,reason
            cap,top,forward,bottom,backward,1,2 1/2 in,gathers,"full, here"
            cap,top,forward,bottom,backward,2,-0.5 cm,,
            side,left of square,,right,,,0,,
            """;

    /** What is spoiled, and how it is read. */
    private record Kind(String name, String text, Function<Source, Draft> reading) {
        byte[] whole() {
            return text.getBytes(StandardCharsets.UTF_8);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Kind> kinds() {
        return Stream.of(
                new Kind("small draft", DraftFiles.text(Drafts.square()), DraftFiles::read),
                new Kind("large draft", DraftFiles.text(Drafts.everything()), DraftFiles::read),
                new Kind(
                        "drawing",
                        SVG,
                        source -> SvgOutlines.read(source, SvgOptions.DEFAULT).draft()),
                new Kind("seam list", CSV, source -> SeamRows.onto(Drafts.square(), source)));
    }

    private enum End {
        READ,
        REFUSED
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void everySpoiledFileEndsInADraftOrAReason(Kind kind) {
        assertThat(kind.reading().apply(new Source("whole", kind.whole(), LIMITS)))
                .isNotNull();
        Map<End, Integer> ends = new EnumMap<>(End.class);
        for (int seed = 0; seed < FILES; seed++) {
            byte[] spoiled = spoiled(kind.whole(), new SplittableRandom(seed));
            long started = System.nanoTime();
            ends.merge(end(kind, spoiled, seed), 1, Integer::sum);
            assertThat(Duration.ofNanos(System.nanoTime() - started))
                    .as("%s, seed %d", kind, seed)
                    .isLessThan(LIMIT.plusSeconds(1));
        }
        assertThat(ends.get(End.REFUSED)).as("%s: %s", kind, ends).isGreaterThan(FILES / 10);
        assertThat(ends.get(End.READ)).as("%s: %s", kind, ends).isGreaterThan(FILES / 100);
    }

    private static End end(Kind kind, byte[] spoiled, int seed) {
        try {
            Draft draft = kind.reading().apply(new Source("spoiled", spoiled, LIMITS));
            draft.pieces().forEach(Paper::outline);
            check(draft);
            assertThat(DraftFiles.parse("again", DraftFiles.text(draft), LIMITS))
                    .isEqualTo(draft);
            return End.READ;
        } catch (FileException refused) {
            assertThat(refused.reason()).isNotBlank();
            return End.REFUSED;
        } catch (RuntimeException | StackOverflowError other) {
            return fail(kind + ", seed " + seed + ": " + new String(spoiled, StandardCharsets.ISO_8859_1), other);
        }
    }

    /** What can be read can be checked, or the check says why not. */
    private static void check(Draft draft) {
        try {
            Checks.all(draft, Checks.SEAM_TOLERANCE)
                    .forEach(finding ->
                            assertThat(finding.sentence(Steps.DEFAULT)).isNotBlank());
        } catch (IllegalArgumentException | DraftingException refused) {
            assertThat(refused).message().isNotBlank();
        }
    }

    private static byte[] spoiled(byte[] whole, SplittableRandom random) {
        byte[] bytes = whole;
        int times = random.nextInt(1, 4);
        for (int i = 0; i < times && bytes.length > 0; i++) {
            int at = random.nextInt(bytes.length);
            int to = Math.min(bytes.length, at + 1 + random.nextInt(random.nextInt(1, 60)));
            bytes = switch (random.nextInt(8)) {
                case 0 -> Arrays.copyOf(bytes, random.nextBoolean() ? at : bytes.length - random.nextInt(5));
                case 1 -> flipped(bytes, random);
                case 2 -> spliced(bytes, at, to, new byte[0]);
                case 3 -> spliced(bytes, at, at, Arrays.copyOfRange(bytes, at, to));
                case 4 -> spliced(bytes, at, at, nested(random));
                case 5 -> figure(bytes, at, random);
                case 6 -> figure(bytes, random.nextInt(bytes.length), random);
                default -> exchanged(bytes, at, random);
            };
        }
        return bytes;
    }

    private static byte[] flipped(byte[] bytes, SplittableRandom random) {
        byte[] flipped = bytes.clone();
        int count = random.nextInt(1, 8);
        for (int i = 0; i < count; i++) {
            flipped[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return flipped;
    }

    private static byte[] spliced(byte[] bytes, int from, int to, byte[] by) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(bytes, 0, from);
        out.writeBytes(by);
        out.write(bytes, to, bytes.length - to);
        return out.toByteArray();
    }

    private static byte[] nested(SplittableRandom random) {
        String bracket = List.of("[", "{\"a\":", "<g>", "(", "\"", "<![CDATA[", "<!--", "&a;", "[[],")
                .get(random.nextInt(9));
        return bracket.repeat(random.nextInt(2) == 0 ? random.nextInt(3) : random.nextInt(5_000))
                .getBytes(StandardCharsets.UTF_8);
    }

    /** Puts an odd figure in place of the next one. */
    private static byte[] figure(byte[] bytes, int at, SplittableRandom random) {
        int from = at;
        while (from < bytes.length && !number(bytes[from])) {
            from++;
        }
        int to = from;
        while (to < bytes.length && number(bytes[to])) {
            to++;
        }
        String odd = List.of(
                        "1e308",
                        "-1e308",
                        "1e999",
                        "NaN",
                        "-0",
                        "1e-320",
                        "0",
                        "-1",
                        "1e9",
                        "2147483648",
                        "9".repeat(2_000),
                        "100.00000001",
                        "0.1",
                        "3",
                        "1e6",
                        "true",
                        "null",
                        "Infinity")
                .get(random.nextInt(18));
        return spliced(bytes, from, to, odd.getBytes(StandardCharsets.UTF_8));
    }

    private static boolean number(byte c) {
        return (c >= '0' && c <= '9') || c == '.' || c == '-';
    }

    /** Puts one word of the file in place of another. */
    private static byte[] exchanged(byte[] bytes, int at, SplittableRandom random) {
        List<String> words = List.of(new String(bytes, StandardCharsets.ISO_8859_1).split("[^A-Za-z]+", 400));
        String word = words.get(random.nextInt(words.size()));
        int to = at;
        while (to < bytes.length && Character.isLetter(bytes[to])) {
            to++;
        }
        return spliced(
                bytes, at, to, word.substring(0, Math.min(40, word.length())).getBytes(StandardCharsets.ISO_8859_1));
    }

    /** A million points are refused by the usual limits and drawn by wider ones, within their time. */
    @Test
    void aMillionPoints() {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < 1_000_000; i++) {
            double angle = 2 * Math.PI * i / 1_000_000;
            points.append((float) (500 * Math.cos(angle)))
                    .append(' ')
                    .append((float) (500 * Math.sin(angle)))
                    .append(' ');
        }
        String svg =
                "<svg xmlns='http://www.w3.org/2000/svg' width='1000mm' viewBox='-500 -500 1000 1000'><polygon id='disc' points='"
                        + points + "'/></svg>";
        Limits wide = new Limits(64 << 20, 10_000_000, 100, 2_000, Duration.ofSeconds(60));
        assertThatThrownBy(() -> SvgOutlines.parse("m.svg", svg, SvgOptions.DEFAULT, wide.within(Duration.ofMillis(1))))
                .isInstanceOf(FileException.class);
        assertThatThrownBy(() -> SvgOutlines.parse("m.svg", svg, SvgOptions.DEFAULT, Limits.DEFAULT))
                .isInstanceOf(FileException.class);
        Piece disc = SvgOutlines.parse("m.svg", svg, SvgOptions.DEFAULT, wide)
                .draft()
                .pieces()
                .get(0);
        assertThat(disc.edges()).hasSize(1);
        assertThat(disc.edges().get(0).base().curves()).hasSizeGreaterThan(990_000);
        String json = DraftFiles.text(new Draft("disc", List.of(disc), List.<Seam>of()));
        assertThatThrownBy(() -> DraftFiles.parse("m.json", json, Limits.DEFAULT))
                .isInstanceOf(FileException.class);
    }
}
