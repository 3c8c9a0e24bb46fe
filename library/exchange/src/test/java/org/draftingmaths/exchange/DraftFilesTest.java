package org.draftingmaths.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.draftingmaths.curve.Arc;
import org.draftingmaths.curve.Cubic;
import org.draftingmaths.curve.Curve;
import org.draftingmaths.curve.Straight;
import org.draftingmaths.piece.Border;
import org.draftingmaths.piece.Draft;
import org.draftingmaths.piece.Edge;
import org.draftingmaths.piece.Grain;
import org.draftingmaths.piece.InsideDart;
import org.draftingmaths.piece.Laid;
import org.draftingmaths.piece.Leg;
import org.draftingmaths.piece.LegShape;
import org.draftingmaths.piece.LevelLine;
import org.draftingmaths.piece.Mouth;
import org.draftingmaths.piece.Notch;
import org.draftingmaths.piece.Opening;
import org.draftingmaths.piece.Panel;
import org.draftingmaths.piece.Piece;
import org.draftingmaths.piece.Run;
import org.draftingmaths.piece.Seam;
import org.draftingmaths.piece.Stretch;
import org.draftingmaths.piece.Use;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class DraftFilesTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static Draft read(String text) {
        return DraftFiles.parse("test.json", text, Limits.DEFAULT);
    }

    private static JsonSchema schema() throws IOException {
        try (InputStream in = DraftFiles.class.getResourceAsStream("draft-2.schema.json")) {
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(in);
        }
    }

    @Test
    void comesBackBitForBit() {
        Draft draft = Drafts.everything();
        assertThat(read(DraftFiles.text(draft))).isEqualTo(draft);
        assertThat(DraftFiles.text(draft)).contains("-0.0");
    }

    @Test
    void sameBytesInEveryLocale() {
        String here = DraftFiles.text(Drafts.everything());
        Locale locale = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(DraftFiles.text(Drafts.everything())).isEqualTo(here);
            assertThat(read(here)).isEqualTo(Drafts.everything());
        } finally {
            Locale.setDefault(locale);
        }
    }

    /** The closed lists of types: a type that is added must be given its place in the file and in this test. */
    @Test
    void everyTypeHasItsPlaceInTheFile() {
        assertThat(Curve.class.getPermittedSubclasses()).containsOnly(Straight.class, Cubic.class, Arc.class);
        assertThat(Border.class.getPermittedSubclasses()).containsOnly(Border.OfEdge.class, Border.OfLeg.class);
        Piece front = Drafts.everything().piece("front");
        Stream<Use> darts = Stream.concat(
                Arrays.stream(Leg.values()).map(leg -> new Use.Dart(3, leg)),
                Stream.of(
                        new Use.Dart(3, Leg.BEFORE).pressedOpen(),
                        new Use.Dart(3, Leg.AFTER).shaped(LegShape.bowed(0.4, -1.25))));
        Stream<Use> folds = Arrays.stream(Use.Under.values())
                .flatMap(under -> Arrays.stream(Use.Stitched.values()).map(lines -> new Use.Folded(under, 20, lines)));
        Stream<Use> uses = Stream.concat(
                Stream.concat(darts, folds), Arrays.stream(Use.Kind.values()).map(Use.Left::new));
        List<Class<?>> seen = new ArrayList<>();
        uses.forEach(use -> {
            Draft draft = new Draft("uses", List.of(front.using("waist dart", use)), List.of());
            assertThat(read(DraftFiles.text(draft))).isEqualTo(draft);
            seen.add(use.getClass());
        });
        assertThat(seen).contains(Use.class.getPermittedSubclasses());
    }

    /** What stands in the file for a component of another name. */
    private static final Map<String, String> OTHER_NAMES = Map.of("border", "edge", "kind", "as");

    static Stream<Arguments> records() {
        return Stream.of(
                Arguments.of(Draft.class, ""),
                Arguments.of(Piece.class, "/$defs/piece"),
                Arguments.of(Grain.class, "/$defs/piece/properties/grain"),
                Arguments.of(Edge.class, "/$defs/edge"),
                Arguments.of(Straight.class, "/$defs/curve/oneOf/0"),
                Arguments.of(Cubic.class, "/$defs/curve/oneOf/1"),
                Arguments.of(Arc.class, "/$defs/curve/oneOf/2/properties/arc"),
                Arguments.of(Opening.class, "/$defs/opening"),
                Arguments.of(Mouth.class, "/$defs/mouth"),
                Arguments.of(Use.Dart.class, "/$defs/use/oneOf/0"),
                Arguments.of(Use.Folded.class, "/$defs/use/oneOf/1"),
                Arguments.of(Use.Left.class, "/$defs/use/oneOf/2"),
                Arguments.of(LegShape.Off.class, "/$defs/legShape/items"),
                Arguments.of(Panel.class, "/$defs/panel"),
                Arguments.of(Run.class, "/$defs/run"),
                Arguments.of(Border.OfEdge.class, "/$defs/run"),
                Arguments.of(Border.OfLeg.class, "/$defs/run"),
                Arguments.of(Stretch.class, "/$defs/panel/properties/lines/items"),
                Arguments.of(Laid.class, "/$defs/panel/properties/darts/items"),
                Arguments.of(LevelLine.class, "/$defs/level"),
                Arguments.of(InsideDart.class, "/$defs/insideDart"),
                Arguments.of(Notch.class, "/$defs/notch"),
                Arguments.of(Seam.class, "/$defs/seam"),
                Arguments.of(Seam.Part.class, "/$defs/part"),
                Arguments.of(Seam.Place.class, "/$defs/place"),
                Arguments.of(Seam.Held.class, "/$defs/seam/properties/held/items"));
    }

    /** A component that is added to a record must be given its field in the file. Points of curves stand in one list. */
    @ParameterizedTest
    @MethodSource("records")
    void everyComponentHasItsField(Class<?> type, String pointer) throws IOException {
        try (InputStream in = DraftFiles.class.getResourceAsStream("draft-2.schema.json")) {
            JsonNode described = MAPPER.readTree(in).at(pointer).get("properties");
            List<String> components = Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getName)
                    .toList();
            if (described.has("straight") || described.has("cubic")) {
                JsonNode points = described.elements().next();
                assertThat(points.get("minItems").asInt()).isEqualTo(components.size());
            } else {
                assertThat(described.fieldNames())
                        .toIterable()
                        .containsAll(components.stream()
                                .map(name -> OTHER_NAMES.getOrDefault(name, name))
                                .toList());
            }
        }
    }

    @Test
    void fitsItsSchema() throws IOException {
        for (Draft draft : List.of(Drafts.everything(), Drafts.square())) {
            assertThat(schema().validate(MAPPER.readTree(DraftFiles.text(draft))))
                    .isEmpty();
        }
    }

    /** The file in FORMAT.md can be read as it stands there, and fits the schema. */
    @Test
    void theDocumentedFileCanBeRead() throws IOException {
        String page = Files.readString(Path.of("FORMAT.md"));
        String json = page.substring(page.indexOf("```json") + 7);
        json = json.substring(0, json.indexOf("```"));
        assertThat(schema().validate(MAPPER.readTree(json))).isEmpty();
        Draft pocket = read(json);
        assertThat(pocket.piece("pocket").edge("top").allowance()).isEqualTo(20);
        assertThat(pocket.piece("pocket").notches()).hasSize(1);
        String csv = page.substring(page.indexOf("```csv") + 6);
        String columns = csv.strip().lines().findFirst().orElseThrow();
        assertThat(columns.split(" *, *")).containsExactlyElementsOf(SeamLists.COLUMNS);
    }

    /** Every field left out, and every value replaced by one of another type: refused by the schema and by the reader alike. */
    @Test
    void theSchemaAndTheReaderRefuseTheSame() throws IOException {
        JsonSchema schema = schema();
        Set<String> optional = Set.of("farMouth", "grain");
        JsonNode whole = MAPPER.readTree(DraftFiles.text(Drafts.everything()));
        int judged = 0;
        for (String pointer : oneOfEach(whole)) {
            int slash = pointer.lastIndexOf('/');
            String name = pointer.substring(slash + 1);
            JsonNode broken = whole.deepCopy();
            if (broken.at(pointer.substring(0, slash)) instanceof ObjectNode parent
                    && !optional.contains(name)
                    && !pointer.matches("/seams/.*/(from|to)")) {
                parent.remove(name);
                refusedByBoth(schema, broken, pointer + " left out");
                judged++;
            }
            for (JsonNode other : List.of(
                    JsonNodeFactory.instance.booleanNode(true),
                    JsonNodeFactory.instance.textNode(" "),
                    JsonNodeFactory.instance.objectNode(),
                    JsonNodeFactory.instance.arrayNode().add(true),
                    JsonNodeFactory.instance.nullNode())) {
                boolean replaces = !whole.at(pointer).getNodeType().equals(other.getNodeType())
                        || whole.at(pointer).isObject()
                        || whole.at(pointer).isArray();
                if (replaces) {
                    refusedByBoth(schema, replaced(whole, pointer, other), pointer + " replaced by " + other);
                    judged++;
                }
            }
        }
        assertThat(judged).isGreaterThan(500);
    }

    private static void refusedByBoth(JsonSchema schema, JsonNode broken, String what) {
        assertThat(schema.validate(broken)).as("schema: " + what).isNotEmpty();
        assertThatThrownBy(() -> read(broken.toString())).as("reader: " + what).isInstanceOf(FileException.class);
    }

    private static JsonNode replaced(JsonNode whole, String pointer, JsonNode by) {
        JsonNode copy = whole.deepCopy();
        int slash = pointer.lastIndexOf('/');
        JsonNode parent = copy.at(pointer.substring(0, slash));
        if (parent instanceof ArrayNode list) {
            list.set(Integer.parseInt(pointer.substring(slash + 1)), by);
        } else {
            ((ObjectNode) parent).set(pointer.substring(slash + 1), by);
        }
        return copy;
    }

    /** A pointer to one of each kind of place: places that differ in their indices alone are the same. */
    private static List<String> oneOfEach(JsonNode whole) {
        List<String> all = new ArrayList<>();
        collect(whole, "", all);
        return List.copyOf(all.stream()
                .collect(Collectors.toMap(
                        pointer -> pointer.replaceAll("[0-9]+", "#"),
                        pointer -> pointer,
                        (a, b) -> a,
                        java.util.LinkedHashMap::new))
                .values());
    }

    private static void collect(JsonNode node, String pointer, List<String> all) {
        if (!pointer.isEmpty()) {
            all.add(pointer);
        }
        if (node.isObject()) {
            node.fieldNames().forEachRemaining(name -> collect(node.get(name), pointer + "/" + name, all));
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            collect(node.get(i), pointer + "/" + i, all);
        }
    }

    /** What is written for what in the square's file, and what is said about it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "version" : 2        | "version" : 3             | line 3, column 15, /version: version 3 is not known; versions 1 to 2 are read
            "version" : 2        | "version" : 2.0           | line 3, column 15, /version: a whole number is needed here, but there is the number 2.0
            "format" : "draf     | "format" : "x             | line 2, column 14, /format: this is not 'drafting-maths draft' but 'xting-maths draft'
            "role" : "seam"      | "role" : "seem"           | line 9, column 16, /pieces/0/edges/0/role: 'seem' is not known here; known are seam, fold, finished, hem, style line
            "allowance" : 0.0    | "allowance" : NaN         | line 10, column 24: Non-standard token 'NaN'
            "allowance" : 0.0    | "allowance" : 1e999       | line 10, column 21: [1e999] is too large for a number
            "allowance" : 0.0    | "allowance" : -1          | line 7, column 17, /pieces/0/edges/0: Allowance of edge 'bottom' must be 0 mm or more: -1.0 mm.
            "allowance" : 0.0    | "allowance" : "0"         | line 10, column 21, /pieces/0/edges/0/allowance: a number is needed here, but there is the text [0]
            "allowance" : 0.0    | "role" : "seam"           | line 10, column 7: the field 'role' stands twice
            "allowance" : 0.0,   | ''                        | line 7, column 17, /pieces/0/edges/0: the field 'allowance' is missing
            "allowance" : 0.0    | "allowence" : 0.0         | line 10, column 21, /pieces/0/edges/0/allowence: there is no field 'allowence' here; there are name, role, allowance, base
            "name" : "right"     | "name" : "bottom"         | line 5, column 16, /pieces/0: Piece 'square' has more than one edge named 'bottom'.
            "levels" : [ ]       | "levels" : { }            | there is an object
            """)
    void saysWhereAndWhatIsWrong(String was, String is, String said) {
        String text = DraftFiles.text(Drafts.square());
        assertThat(text).contains(was);
        String broken = text.replaceFirst(java.util.regex.Pattern.quote(was), is);
        assertThatThrownBy(() -> read(broken))
                .isInstanceOf(FileException.class)
                .hasMessageStartingWith("test.json, line ")
                .hasMessageContaining(said);
    }

    /** Places and parts of seams: what is said of them, and where. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            "mirrored" : true    | "mirrored" : 1            | /seams/1/first/1/mirrored: true or false is needed here
            "mirrored" : true    | "mirored" : true          | /mirored: there is no field 'mirored' here; there are piece, edge, forward, mirrored, from, to
            "arc" : 60.0         | "arc" : 0.1               | /seams/1/first/0: Part of 'waist' of 'front' stops behind where it begins
            "arc" : 60.0         | "arc" : -1.0              | /seams/1/first/0/to: A place on an edge lies 0 mm or more along it
            "arc" : 60.0         | "arc" : 600.0             | Seam 'chain' takes 'waist' of 'front' from 0 in (0.0 cm) to 23 5/8 in (60.0 cm), but 'waist' is 6 3/4 in (17.0 cm) long.
            "caught" : true      | "caught" : "in"           | /seams/1/caught: true or false is needed here
            "mirrored" : true    | "mirrored" : false        | Seam 'chain' sews the same cloth twice
            """)
    void saysWhatIsWrongWithAChain(String was, String is, String said) {
        String text = DraftFiles.text(Drafts.everything());
        assertThat(text).contains(was);
        int at = text.indexOf("\"seams\"");
        String broken = text.substring(0, at) + text.substring(at).replaceFirst(java.util.regex.Pattern.quote(was), is);
        assertThatThrownBy(() -> read(broken)).isInstanceOf(FileException.class).hasMessageContaining(said);
    }

    @Test
    void clothThatIsSewnTwiceIsRefused() {
        String text = DraftFiles.text(twice(true));
        assertThatThrownBy(() -> read(text.replace("\"caught\" : true", "\"caught\" : false")))
                .isInstanceOf(FileException.class)
                .hasMessageContaining("Seams 'side' and 'facing' both sew 'left' of 'square'");
    }

    private static Draft twice(boolean caught) {
        Seam side = Seam.flat("side", Seam.Mate.of("square", "left"), Seam.Mate.of("square", "right"));
        Seam facing = Seam.flat("facing", Seam.Mate.of("square", "left"), Seam.Mate.backwards("square", "top"));
        return new Draft("square", Drafts.square().pieces(), List.of(side, caught ? facing.caughtIn() : facing));
    }

    /** A file of version 1 as it was written: one edge on one edge, and an edge in two seams, which now is one caught in. */
    @Test
    void versionOneIsRead() throws IOException {
        String old = DraftFiles.text(Drafts.square())
                .replace("\"version\" : 2", "\"version\" : 1")
                .replace("\"seams\" : [ ]", """
                        "seams" : [ {
                          "name" : "side",
                          "first" : { "piece" : "square", "edge" : "left", "forward" : true },
                          "second" : { "piece" : "square", "edge" : "right", "forward" : true },
                          "held" : [ ]
                        }, {
                          "name" : "facing",
                          "first" : { "piece" : "square", "edge" : "left", "forward" : true },
                          "second" : { "piece" : "square", "edge" : "top", "forward" : false },
                          "held" : [ ]
                        } ]""");
        try (InputStream in = DraftFiles.class.getResourceAsStream("draft-1.schema.json")) {
            assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                            .getSchema(in)
                            .validate(MAPPER.readTree(old)))
                    .isEmpty();
        }
        assertThat(read(old)).isEqualTo(twice(true));
        assertThatThrownBy(() -> read(old.replaceFirst("\"held\" : \\[ ]", "\"held\" : [ ], \"caught\" : true")))
                .hasMessageContaining("there is no field 'caught' here; there are name, first, second, held");
    }

    static Stream<String> tornOff() {
        String text = DraftFiles.text(Drafts.square());
        return Stream.of(0, 1, 30, text.length() / 3, text.length() / 2, text.length() - 3)
                .map(length -> text.substring(0, length));
    }

    @ParameterizedTest
    @MethodSource("tornOff")
    void aTruncatedFileIsRefused(String text) {
        assertThatThrownBy(() -> read(text)).isInstanceOf(FileException.class);
    }

    @Test
    void whatDoesNotBelongTogetherIsRefused() {
        String text = DraftFiles.text(Drafts.square());
        assertThatThrownBy(() -> read(text.replace("\"edge\" : \"top\"", "\"edge\" : \"lid\"")))
                .hasMessageContaining("/pieces/0/panels/0/ring/2: piece 'square' has no border 'lid' to lie on");
        assertThatThrownBy(() -> read(text.replace("\"edge\" : \"top\"", "\"edge\" : \"right\"")))
                .isInstanceOf(FileException.class);
        assertThatThrownBy(() -> read(text.replaceFirst("\\[ 1\\.0, -0\\.0", "[ 2.0, -0.0")))
                .hasMessageContaining("/panels/0/ring/0/motion: this is not a turn, a shift or a reflection");
        assertThatThrownBy(() -> read(text.replaceFirst("\"to\" : 100\\.0", "\"to\" : 101.0")))
                .hasMessageContaining("101.0 mm does not lie on 'bottom', which is 100.0 mm long");
        assertThatThrownBy(() -> read(text.replaceFirst("\"to\" : 100\\.0", "\"to\" : 99.0")))
                .hasMessageContaining("/pieces/0/panels/0/ring");
    }

    @Test
    void limitsHold() {
        String text = DraftFiles.text(Drafts.everything());
        Limits usual = Limits.DEFAULT;
        assertThatThrownBy(() -> DraftFiles.parse(
                        "t", text, new Limits(100, usual.values(), usual.depth(), usual.parts(), usual.time())))
                .hasMessage("t: the file has more than the 100 bytes that are read");
        assertThatThrownBy(() -> DraftFiles.parse(
                        "t", text, new Limits(usual.bytes(), 100, usual.depth(), usual.parts(), usual.time())))
                .hasMessageContaining("the file holds more than the 100 values that are read");
        assertThatThrownBy(() -> DraftFiles.parse(
                        "t", text, new Limits(usual.bytes(), usual.values(), 3, usual.parts(), usual.time())))
                .isInstanceOf(FileException.class)
                .hasMessageContaining("line 7")
                .hasMessageContaining("depth");
        assertThatThrownBy(() -> DraftFiles.parse(
                        "t", text, new Limits(usual.bytes(), usual.values(), usual.depth(), 2, usual.time())))
                .hasMessageContaining("in this list; at most 2 are read");
        assertThatThrownBy(() -> DraftFiles.parse("t", text, usual.within(Duration.ofNanos(1))))
                .hasMessageContaining("reading took longer than the 0.0 seconds allowed");
        assertThatThrownBy(() -> new Limits(0, 1, 1, 1, Duration.ofSeconds(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("A limit of bytes is 1 or more: 0.");
    }

    @Test
    void filesAreWholeOrNotThere(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("draft.json");
        DraftFiles.write(Drafts.square(), file);
        assertThat(DraftFiles.read(file, Limits.DEFAULT)).isEqualTo(Drafts.square());
        DraftFiles.write(Drafts.everything(), file);
        assertThat(DraftFiles.read(file, Limits.DEFAULT)).isEqualTo(Drafts.everything());
        assertThat(folder).isDirectoryContaining(each -> each.equals(file)).isDirectoryNotContaining("glob:*.part");

        Path taken = Files.createDirectories(folder.resolve("taken").resolve("inner"));
        assertThatThrownBy(() -> DraftFiles.write(Drafts.square(), taken.getParent()))
                .isInstanceOf(IOException.class);
        assertThat(folder.toFile().list()).containsExactlyInAnyOrder("draft.json", "taken");
    }

    @Test
    void aMissingFileAndOneInAnotherEncodingAreRefused(@TempDir Path folder) throws IOException {
        assertThatThrownBy(() -> DraftFiles.read(folder.resolve("none.json"), Limits.DEFAULT))
                .hasMessage("none.json: there is no such file");
        Path latin = Files.write(
                folder.resolve("latin.json"),
                DraftFiles.text(Drafts.everything()).getBytes(StandardCharsets.ISO_8859_1));
        assertThatThrownBy(() -> DraftFiles.read(latin, Limits.DEFAULT))
                .isInstanceOf(FileException.class)
                .hasMessageContaining("UTF-8");
    }

    @Test
    void halfACharacterIsRefusedWhenWriting() {
        Draft square = Drafts.square();
        Draft broken = new Draft("broken \uD83E", square.pieces(), List.of());
        assertThatThrownBy(() -> DraftFiles.text(broken))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("holds half a character");
    }
}
