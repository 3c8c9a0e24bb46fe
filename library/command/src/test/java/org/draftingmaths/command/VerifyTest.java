package org.draftingmaths.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.xpath.XPathFactory;
import org.draftingmaths.exchange.AnyDraft;
import org.draftingmaths.exchange.DraftFiles;
import org.draftingmaths.exchange.Limits;
import org.draftingmaths.exchange.SeamLists;
import org.draftingmaths.exchange.SvgOptions;
import org.draftingmaths.piece.Draft;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;

class VerifyTest {

    private static final Path SKIRT = Path.of("example", "garden-skirt.svg");
    private static final Path SEAMS = Path.of("example", "garden-skirt.csv");

    private static final Path FOUND = Path.of("example", "rowing-skirt.svg");

    /** What the command said, and how it ended. */
    private record Said(int code, String out, String err) {}

    private static Said run(Object... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] words = List.of(args).stream().map(String::valueOf).toArray(String[]::new);
        int code = Verify.run(words, new PrintWriter(out), new PrintWriter(err));
        return new Said(code, out.toString(), err.toString().replace(System.lineSeparator(), "\n"));
    }

    /** A process of its own, as from a shell. */
    private static Said process(List<String> java, Object... args) throws Exception {
        Path out = Files.createTempFile("out", ".txt");
        Path err = Files.createTempFile("err", ".txt");
        try {
            List<String> words = new ArrayList<>();
            words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
            words.addAll(java);
            words.addAll(List.of("-cp", System.getProperty("java.class.path"), Verify.class.getName()));
            List.of(args).forEach(arg -> words.add(arg.toString()));
            Process process = new ProcessBuilder(words)
                    .redirectOutput(out.toFile())
                    .redirectError(err.toFile())
                    .start();
            boolean ended = process.waitFor(120, TimeUnit.SECONDS);
            if (!ended) {
                process.destroyForcibly();
            }
            assertThat(ended).as("ends within two minutes").isTrue();
            return new Said(process.exitValue(), Files.readString(out), Files.readString(err));
        } finally {
            Files.delete(out);
            Files.delete(err);
        }
    }

    /** The planted fault: the back's side seam is 6 mm longer than the front's. */
    @Test
    void findsThePlantedFault() {
        Said said = run(SKIRT, SEAMS);
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.out())
                .contains("'front-side' of 'front' on 'back-side' of 'back': the seam lengths do not match")
                .contains("off by -6.00 mm")
                .endsWith("1 finding.\n");
        assertThat(said.err()).isEmpty();
    }

    /** The planted 6 mm are more than 1/8 in, and less than 1/4 in. */
    @Test
    void saysHowMuchAFindingWeighs() {
        assertThat(run(SKIRT, SEAMS, "--slight", "1/4 in").out())
                .contains("tolerance 0.50 mm. Slight: many who sew take up to 6.35 mm.\n")
                .endsWith("1 finding: 1 slight.\n");
        assertThat(run(SKIRT, SEAMS, "--slight", "5.9 mm").out()).endsWith("1 finding.\n");
        assertThat(run(SKIRT, SEAMS, "--slight", "1/4 in", "--as", "json").out())
                .contains("\"severity\" : \"slight\"");
        assertThat(run(SKIRT, SEAMS, "--slight", "1/4 in").code()).isEqualTo(1);
    }

    /** The planted 6 mm taken off the back's side seam; its hem begins there, otherwise as it was. */
    private static String shortened() throws IOException {
        return Files.readString(SKIRT).replace(" L 564.464,637.982", "").replace("564.464,637.982", "564,632");
    }

    /** The back's hem drawn as the front's, 300 mm beside it: square to the side seam and to the fold. */
    @Test
    void findsNothingWhereNothingIs(@TempDir Path folder) throws IOException {
        String mended = shortened()
                .replace("C 484.704,644.17 430,646 320,646", "C 484.24,638.188 430,640 320,640")
                .replace("x1=\"320\" y1=\"646\"", "x1=\"320\" y1=\"640\"");
        Path file = Files.writeString(folder.resolve("mended.svg"), mended);
        assertThat(run(file, SEAMS)).isEqualTo(new Said(0, "Nothing found.\n", ""));
        assertThat(run(SKIRT, SEAMS, "--tolerance", "1/4 in")).isEqualTo(new Said(0, "Nothing found.\n", ""));
        assertThat(run(SKIRT, SEAMS, "--tolerance", "5.9 mm").code()).isEqualTo(1);
    }

    /** Its seam mended but not its hem, which still comes to the side from 6 mm lower: where front and back meet it has a peak. */
    @Test
    void findsThePeakOfAHemThatIsNotSquareToTheSide(@TempDir Path folder) throws IOException {
        Said said = run(Files.writeString(folder.resolve("shortened.svg"), shortened()), SEAMS);
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.out())
                .startsWith(
                        "'front-hem' of 'front' and 'back-hem' of 'back' at seam 'front-side on back-side': the line has a peak")
                .endsWith("1 finding.\n");
    }

    @Test
    void readsDraftsInJsonAndWritesFindingsInJson(@TempDir Path folder) throws IOException {
        Draft draft = SeamLists.read(
                SEAMS, AnyDraft.read(SKIRT, SvgOptions.DEFAULT, Limits.DEFAULT).draft(), Limits.DEFAULT);
        Path file = folder.resolve("skirt.json");
        DraftFiles.write(draft, file);
        Said own = run(file);
        assertThat(own).isEqualTo(run(file, SEAMS)).isEqualTo(run(SKIRT, SEAMS));
        Path to = folder.resolve("findings.json");
        Said json = run(file, "--as", "json", "--to", to);
        assertThat(json).isEqualTo(new Said(1, "", ""));
        assertThat(Files.readString(to))
                .isEqualTo(run(file, "--as=JSON").out())
                .contains(
                        "\"format\" : \"drafting-maths findings\"",
                        "\"version\" : 2",
                        "\"remedy\" : \"",
                        "\"kind\" : \"SEAM_LENGTHS_DIFFER\"",
                        "\"tolerance\" : 0.5");
    }

    @Test
    void aBowTieIsRefusedWithWhatToDo(@TempDir Path folder) throws IOException {
        String svg = "<svg xmlns='http://www.w3.org/2000/svg' width='300mm' height='300mm' viewBox='0 0 300 300'>"
                + "<path d='M 10,10 L 200,200 L 200,10 L 10,200 Z'/></svg>";
        refused(
                "like a bow-tie; draw its edges so that they meet at their ends only",
                Files.writeString(folder.resolve("b.svg"), svg));
    }

    /**
     * Nothing is written on the drawing. Planted: a leg of sqrt(16^2 + 135^2) = 135.94 mm to one of sqrt(13^2 + 130^2) = 130.65 mm, and a hem
     * that falls 8 mm on 220 mm, 2.08 degrees, towards the fold.
     */
    @Test
    void supposesWhatIsNotDeclared(@TempDir Path folder) throws IOException {
        Path list = folder.resolve("seams.csv");
        Said said = run(FOUND, "--supposed", list);
        assertThat(said.code()).isEqualTo(1);
        assertThat(said).isEqualTo(run(FOUND)).isEqualTo(run(FOUND, "--suppose"));
        assertThat(said.out())
                .startsWith("Supposed from the shapes, where nothing is declared:\n")
                .contains("Certain: 'dart 1' in 'edge ", "Likely: 'dart 1' in 'edge ")
                .contains("Certain: 'edge 3' of 'piece 1' and 'edge 3' of 'piece 2' are sewn together")
                .contains("the legs of the dart are unequal")
                .contains("off by -5.30 mm")
                .contains("the edge is not square to the fold")
                .contains("off by -2.08°")
                .endsWith("3 findings.\n");
        assertThat(Files.readString(list))
                .startsWith("# Supposed from the shapes")
                .contains("\n# Only possible");
        Said again = run(FOUND, list, "--suppose");
        assertThat(again.code()).isEqualTo(1);
        assertThat(again.out()).endsWith("3 findings.\n").doesNotContain("Certain: 'edge 3' of 'piece 1'");
        String mended = Files.readString(FOUND)
                .replace("L 424,55 C 451,58.2", "L 421,60 C 451,63")
                .replace("320,568", "320,560");
        Path clean = Files.writeString(folder.resolve("clean.svg"), mended);
        assertThat(run(clean).code()).isZero();
        assertThat(run(clean, "--as", "json").out())
                .contains("\"suppositions\" : [", "\"sureness\" : \"certain\"", "\"findings\" : [ ]");
        refused("more than 0 mm: 0.0 mm", FOUND, "--tolerance", "0 mm");
    }

    @Test
    void badInputEndsInTwoWithTheReason(@TempDir Path folder) throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.svg"), "<svg xmlns='http://www.w3.org/2000/svg'");
        Path csv = Files.writeString(folder.resolve("bad.csv"), "edge,mate,ease\nfront-side,back-side,1\n");
        Path neither = Files.writeString(folder.resolve("neither.txt"), "front");
        refused("none.svg: there is no such file", "none.svg");
        refused("it is not well-formed XML", broken);
        refused("bad.csv, line 2, column 3 (ease): Cannot read [1] as a length: it has no unit", SKIRT, csv);
        refused("neither.txt: this is neither a draft in JSON nor a drawing in SVG", neither);
        refused("Missing required parameter: 'DRAFT'");
        refused("Unknown option: '--colour'", SKIRT, "--colour", "red");
        refused("Invalid value for option '--gap': Cannot read [3] as a length: it has no unit", SKIRT, "--gap", "3");
        refused("A gap to be closed is 200.0; allowed is 0 to 100 mm.", SKIRT, "--gap", "20 cm");
        refused("A corner is 4.1", SKIRT, "--corner", "240");
        refused("--seconds is 1 or more: 0.", SKIRT, "--seconds", "0");
        refused("no-folder", SKIRT, "--to", folder.resolve("no-folder").resolve("x.txt"));
        refused("IOException", folder);
        assertThat(folder.toFile().list()).containsExactlyInAnyOrder("broken.svg", "bad.csv", "neither.txt");
    }

    private static void refused(String reason, Object... args) {
        Said said = run(args);
        assertThat(said.err()).contains(reason).doesNotContain("\tat ");
        assertThat(said).extracting(Said::code, Said::out).containsExactly(2, "");
    }

    @Test
    void tellsHowToUseIt() {
        Said help = run("--help");
        assertThat(help.code()).isZero();
        assertThat(help.out()).contains("DRAFT [SEAMS]", "0 nothing found, 1 findings, 2 bad input");
    }

    /** The version is that of the project, read here from where the project declares it. */
    @Test
    void saysItsVersion() throws Exception {
        Document project = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(Path.of("..", "..", "pom.xml").toFile());
        String version = XPathFactory.newInstance().newXPath().evaluate("/project/version", project);
        assertThat(version).matches("\\d+\\..*");
        assertThat(run("--version")).isEqualTo(new Said(0, "Drafting Maths " + version + System.lineSeparator(), ""));
    }

    /** The same bytes and the same exit code from a process of its own, whatever the locale and the encoding of the machine. */
    @ParameterizedTest
    @ValueSource(strings = {"en-US", "ar-EG-u-nu-arab", "tr-TR", "fa-IR"})
    void saysTheSameInEveryLocale(String tag) throws Exception {
        Locale locale = Locale.forLanguageTag(tag);
        List<String> java = List.of(
                "-Duser.language=" + locale.getLanguage(),
                "-Duser.country=" + locale.getCountry(),
                "-Dfile.encoding=US-ASCII");
        assertThat(process(java, SKIRT, SEAMS)).isEqualTo(run(SKIRT, SEAMS));
        assertThat(process(java, SKIRT, SEAMS, "--as", "json")).isEqualTo(run(SKIRT, SEAMS, "--as", "json"));
        assertThat(process(java, "none.svg").code()).isEqualTo(2);
    }

    /** The largest files that are read stay within the stated memory; larger ones are refused for their size. */
    @Test
    void hostileFilesStayWithinTheStatedMemory(@TempDir Path folder) throws Exception {
        List<String> small = List.of("-Xmx384m");
        String head = "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' viewBox='0 0 100 100'>";
        Path values = write(folder, "values.json", "{\"format\":[" + "[1],".repeat(490_000) + "1]}");
        Path longText = write(folder, "long.json", "{\"format\":\"" + "x".repeat(16_000_000) + "\"}");
        Path points = write(folder, "points.svg", head + "<path d='M0 0" + "l1 1".repeat(400_000) + "z'/></svg>");
        Path name = write(
                folder,
                "name.svg",
                head + "<rect id='" + "x".repeat(16_000_000) + "' width='9' height='9'/><rect/></svg");
        Path csv = write(folder, "wide.csv", "edge,mate,ease\n\"" + ",\n".repeat(8_000_000));
        Path large = write(folder, "large.json", " ".repeat(17 << 20));
        for (Path file : List.of(values, longText, points, name, large)) {
            Said said = process(small, file);
            assertThat(said.code()).as(file + ": " + said.err()).isEqualTo(2);
            assertThat(said.err())
                    .doesNotContain("OutOfMemory")
                    .startsWith(file.getFileName().toString());
        }
        Said list = process(small, SKIRT, csv);
        assertThat(list.code()).isEqualTo(2);
        assertThat(list.err()).startsWith("wide.csv").doesNotContain("OutOfMemory");
    }

    private static Path write(Path folder, String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
    }

    /** The command in the README, as it stands there, says what stands beneath it. */
    @Test
    void theReadmeSaysWhatTheCommandSays() throws IOException {
        Matcher found = Pattern.compile(
                        "java -jar library/command/target/drafting-maths-command\\.jar (?<args>[^\\n]*)\\n```\\n\\n```text\\n(?<said>.*?)```",
                        Pattern.DOTALL)
                .matcher(Files.readString(Path.of("..", "..", "README.md")));
        assertThat(found.find()).isTrue();
        Object[] args = Pattern.compile(" ")
                .splitAsStream(found.group("args"))
                .map(arg -> arg.startsWith("library/") ? Path.of("..", "..").resolve(arg) : arg)
                .toArray();
        assertThat(run(args).out()).isEqualTo(found.group("said"));
    }
}
