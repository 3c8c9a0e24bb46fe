package org.draftingmaths.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.draftingmaths.piece.Beside;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Seam;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeamListsTest {

    private static Draft two() {
        Piece one = Drafts.square().pieces().get(0);
        return new Draft("two", List.of(one.named("front"), one.named("back, left")), List.of());
    }

    private static List<Seam> seams(String list) {
        return SeamLists.parse("seams.csv", list, two(), Limits.DEFAULT).seams();
    }

    @Test
    void readsEdgesMatesAndEase() {
        List<Seam> seams = seams("""
                # a comment
                edge,               mate,                       ease

                left of front,      "right of back, left",  0
                top of front,       "top of back, left",    1/4 in
                bottom of front,    "bottom of back, left", -0.5 cm
                """);
        assertThat(seams)
                .containsExactly(
                        Seam.flat(
                                "left of front on right of back, left",
                                Seam.Mate.of("front", "left"),
                                Seam.Mate.of("back, left", "right")),
                        new Seam(
                                "top of front on top of back, left",
                                Seam.Mate.of("front", "top"),
                                Seam.Mate.of("back, left", "top"),
                                List.of(new Seam.Held(1, 6.35, Seam.How.EASE, ""))),
                        new Seam(
                                "bottom of front on bottom of back, left",
                                Seam.Mate.of("front", "bottom"),
                                Seam.Mate.of("back, left", "bottom"),
                                List.of(new Seam.Held(1, -5, Seam.How.EASE, ""))));
    }

    @Test
    void linesOfOneNameAreIntervalsOfOneSeam() {
        List<Seam> seams =
                SeamLists.parse("s.csv", """
                        seam,edge,mate,mate direction,interval,ease,how,reason
                        cap,top,bottom,backward,2,2 cm,gathers,"full, here"
                        cap,top,bottom,backward,3,1 cm,,
                        """, Drafts.square(), Limits.DEFAULT).seams();
        assertThat(seams)
                .containsExactly(new Seam(
                        "cap",
                        Seam.Mate.of("square", "top"),
                        Seam.Mate.backwards("square", "bottom"),
                        List.of(
                                new Seam.Held(2, 20, Seam.How.GATHERS, "full, here"),
                                new Seam.Held(3, 10, Seam.How.EASE, ""))));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            edge,mate,ease;top,bottom,0          | line 2, column 1 (edge): more than one piece has an edge 'top'; write 'edge of piece'
            edge,mate,ease;lid of front,x,0      | line 2, column 1 (edge): there is no edge 'lid of front'; there are bottom of front, right of front
            edge,mate,ease;top of front,,0       | line 2, column 2 (mate): an edge is needed here
            edge,mate,ease;top of front,top of front,1,5 cm | line 2: the line has 4 cells, but there are 3 columns; a decimal comma would do that
            edge,mate,ease;top of front,left of front,5 | line 2, column 3 (ease): Cannot read [5] as a length: it has no unit
            edge,mate,ease;top of front,left of front,NaN | line 2, column 3 (ease): Cannot read [NaN] as a length
            edge,mate;a,b                        | line 1: the column 'ease' is missing
            edge,mate,ease,colour;a,b            | line 1, column 4: there is no column 'colour'; there are seam, edge
            edge,mate,ease,edge;a,b              | line 1, column 4: the column 'edge' stands twice
            edge,mate,ease,how;top of front,left of front,1 cm,glue | line 2, column 4 (how): 'glue' is not known here
            edge,mate,ease,interval;top of front,left of front,1 cm,0 | line 2, column 4 (interval): Notch intervals count from 1
            edge,mate,ease,interval;top of front,left of front,1 cm,x | line 2, column 4 (interval): 'x' is no whole number
            edge,mate,ease,mate direction;top of front,left of front,1 cm,up | line 2, column 4 (mate direction): 'up' is no direction
            edge,mate,ease;top of front,left of front,0;top of front,left of front,0 | line 3: the seam stands twice
            seam,edge,mate,ease;s,top of front,left of front,0;s,left of front,top of front,0 | line 3: the seam 's' joins other edges further up
            edge,mate,ease;"top of front,left of front,0 | line 2
            ' '                                  | the seam list is empty
            """)
    void saysWhereAndWhatIsWrong(String list, String said) {
        assertThatThrownBy(() -> seams(list.replace(';', '\n')))
                .isInstanceOf(FileException.class)
                .hasMessageStartingWith("seams.csv")
                .hasMessageContaining(said);
    }

    /** Seeded lists of all that a seam can say come back as they were. */
    @Test
    void comesBackAsItWas() {
        SplittableRandom random = new SplittableRandom(7);
        for (int round = 0; round < 200; round++) {
            List<Seam> seams = new ArrayList<>();
            int count = random.nextInt(4);
            for (int i = 0; i < count; i++) {
                List<Seam.Held> held = IntStream.range(0, random.nextInt(3))
                        .mapToObj(interval -> new Seam.Held(
                                interval + 1,
                                random.nextDouble(-30, 30),
                                List.of(Seam.How.values()).get(random.nextInt(4)),
                                List.of("", "a, b", "\"c\"\nd", "# e").get(random.nextInt(4))))
                        .toList();
                Seam seam = new Seam(
                        List.of("# seam", "a, b", "plain").get(random.nextInt(3)) + " " + i,
                        mate(random, "top", "left"),
                        mate(random, "right", "bottom"),
                        held,
                        random.nextBoolean());
                if (isSewnOnce(seams, seam)) {
                    seams.add(seam);
                }
            }
            Draft draft = new Draft("two", two().pieces(), seams);
            assertThat(SeamLists.parse("s", SeamLists.text(draft), two(), Limits.DEFAULT))
                    .as("round " + round + " of seed 7")
                    .isEqualTo(draft);
        }
    }

    private static boolean isSewnOnce(List<Seam> seams, Seam seam) {
        try {
            List<Seam> all = new ArrayList<>(seams);
            all.add(seam);
            return new Draft("two", two().pieces(), all).seams().size() > seams.size();
        } catch (IllegalArgumentException twice) {
            return false;
        }
    }

    /** A chain of one to four edges, or parts of them. */
    private static Seam.Mate mate(SplittableRandom random, String... edges) {
        Seam.Mate chain = null;
        for (String edge : edges) {
            Seam.Mate whole = mate(two().pieces().get(random.nextInt(2)).name(), edge, random.nextBoolean());
            Notch from = new Notch(edge, random.nextDouble(50), random.nextBoolean() ? Beside.BEFORE : Beside.AFTER);
            Notch to = new Notch(edge, random.nextDouble(51, 100), random.nextBoolean() ? Beside.BEFORE : Beside.AFTER);
            Seam.Mate part = switch (random.nextInt(6)) {
                case 0 -> whole.between(from, to);
                case 1 -> whole.from(from);
                case 2 -> whole.upTo(to);
                default -> whole;
            };
            Seam.Mate half = random.nextInt(3) == 0 ? part.mirrored() : part;
            chain = chain == null || random.nextInt(3) == 0 ? half : chain.then(half);
        }
        return chain;
    }

    private static Seam.Mate mate(String piece, String edge, boolean forward) {
        return forward ? Seam.Mate.of(piece, edge) : Seam.Mate.backwards(piece, edge);
    }

    /** A whole waistband. One word stands for all edges of a side. */
    @Test
    void aSideMayBeSeveralEdgesAndPartsOfThem() {
        List<Seam> seams = seams("""
                seam,edge,edge direction,mate,mate direction,ease,mate stretch,mate half,caught
                waist,top of front,,"left of front + left of back, left",forward + backward,0,,drawn + mirrored,
                strap,bottom of front,,"top of back, left",,0,80 mm to 92 mm after,,caught in
                slit,right of front,backward,"right of back, left + bottom of back, left",backward,0,+ to 1 in,mirrored,
                """);
        assertThat(seams)
                .containsExactly(
                        Seam.flat(
                                "waist",
                                Seam.Mate.of("front", "top"),
                                Seam.Mate.of("front", "left")
                                        .then(Seam.Mate.backwards("back, left", "left")
                                                .mirrored())),
                        Seam.flat(
                                        "strap",
                                        Seam.Mate.of("front", "bottom"),
                                        Seam.Mate.of("back, left", "top")
                                                .between(
                                                        new Notch("top", 80, Beside.BEFORE),
                                                        new Notch("top", 92, Beside.AFTER)))
                                .caughtIn(),
                        Seam.flat(
                                "slit",
                                Seam.Mate.backwards("front", "right"),
                                Seam.Mate.backwards("back, left", "right")
                                        .then(Seam.Mate.backwards("back, left", "bottom")
                                                .upTo(new Notch("bottom", 25.4, Beside.BEFORE)))
                                        .mirrored()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            edge,mate,ease;top of front + lid of front,left of front,0 | line 2, column 1 (edge): there is no edge 'lid of front'
            edge,mate,ease;top of front + left,left of front,0 | line 2, column 1 (edge): more than one piece has an edge 'left'
            edge,mate,ease;top of front + ,left of front,0 | line 2, column 1 (edge): there is no edge 'top of front +'
            edge,mate,ease,edge direction;top of front,left of front,0,forward + backward | line 2, column 4 (edge direction): there are 2 here, but 1 edges
            edge,mate,ease,mate stretch;top of front,left of front,0,80 mm | line 2, column 4 (mate stretch): '80 mm' is no stretch; '80 mm to 92 mm' is
            edge,mate,ease,mate stretch;top of front,left of front,0,80 to 92 mm | line 2, column 4 (mate stretch): Cannot read [80] as a length
            edge,mate,ease,mate stretch;top of front,left of front,0,92 mm to 80 mm | line 2, column 4 (mate stretch): Part of 'left' of 'front' stops behind
            edge,mate,ease,mate stretch;top of front,left of front,0,92 mm to 180 mm | line 2: Seam 'top of front on left of front' takes 'left' of 'front' from 3 5/8 in (9.2 cm) to 7 1/8 in (18.0 cm), but 'left' is 3 7/8 in (10.0 cm) long.
            edge,mate,ease,mate half;top of front,left of front,0,other | line 2, column 4 (mate half): 'other' is not known here; known are drawn, mirrored
            edge,mate,ease,caught;top of front,left of front,0,yes | line 2, column 4 (caught): 'yes' is not known here; known are caught in
            edge,mate,ease;top of front,left of front,0;right of front,bottom of front,0;right of front,top of front,0 | line 4: Seams
            """)
    void saysWhatIsWrongWithAChain(String list, String said) {
        assertThatThrownBy(() -> seams(list.replace(';', '\n')))
                .isInstanceOf(FileException.class)
                .hasMessageStartingWith("seams.csv")
                .hasMessageContaining(said);
    }

    /** A name with a plus in it is one name where an edge has it, and refused where it would be read as two. */
    @Test
    void namesWithAPlusInThem() {
        Piece odd = Drafts.square().piece("square").named("a + b");
        Piece a = Drafts.square().piece("square").named("a");
        Draft draft = new Draft(
                "odd",
                List.of(odd, a),
                List.of(Seam.flat("s", Seam.Mate.of("a + b", "top"), Seam.Mate.of("a", "top"))));
        assertThat(SeamLists.parse("s", SeamLists.text(draft), draft, Limits.DEFAULT))
                .isEqualTo(draft);
        Draft chained = new Draft(
                "odd",
                List.of(odd, a),
                List.of(Seam.flat(
                        "s", Seam.Mate.of("a + b", "top").then(Seam.Mate.of("a", "left")), Seam.Mate.of("a", "top"))));
        assertThatThrownBy(() -> SeamLists.text(chained)).hasMessageContaining("would be read as other edges");
    }

    @Test
    void namesThatAListCannotKeepAreRefused() {
        Draft square = Drafts.square();
        Seam spaced = Seam.flat(" a", Seam.Mate.of("square", "top"), Seam.Mate.of("square", "left"));
        assertThatThrownBy(() -> SeamLists.text(new Draft("d", square.pieces(), List.of(spaced))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("[ a] begins or ends with a space, which a seam list does not keep.");
    }

    @Test
    void readsAFileOfABoundedSize(@TempDir Path folder) throws IOException {
        Path file = Files.writeString(folder.resolve("s.csv"), "edge,mate,ease\ntop,bottom,0\n".repeat(1));
        assertThat(SeamLists.read(file, Drafts.square(), Limits.DEFAULT).seams())
                .hasSize(1);
        String long_ = "edge,mate,ease\n" + "top,bottom,0\n".repeat(3000);
        assertThatThrownBy(() -> SeamLists.parse("s.csv", long_, Drafts.square(), Limits.DEFAULT))
                .hasMessageContaining("at most 2000 are read");
        String wide = "edge,mate,ease\n\"" + "x".repeat(15_000_000);
        assertThatThrownBy(() -> SeamLists.parse("s.csv", wide, Drafts.square(), Limits.DEFAULT))
                .isInstanceOf(FileException.class);
    }
}
