package io.faultwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CertificatesCommandTest {
  private static final String LONG =
      "Maria Esperança da Conceição dos Santos Albuquerque Vasconcelos de Figueiredo Sá";
  private static final String ARABIC = "محمد بن عبد الله القحطاني";
  private static final String JAPANESE = "山田 太郎";
  private static final List<String> NAMES =
      List.of("Ada Nør", LONG, ARABIC, JAPANESE, "प्रिया शर्मा", "=Eve <b>&amp; \"Co\"", "Zoë");

  private static final Schema BADGE =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2019_09)
          .getSchema(ourSchema(), InputFormat.JSON);

  @TempDir static Path shared;

  @TempDir Path folder;

  private static Path grades;
  private static Path made;
  private static Path scored;

  private final Shell shell = new Shell();

  private static String ourSchema() {
    try {
      return Files.readString(
          Path.of("src/test/resources/open-badges/achievement-credential.schema.json"));
    } catch (IOException missing) {
      throw new IllegalStateException(missing);
    }
  }

  @BeforeAll
  static void grade() throws IOException {
    Shell shell = new Shell();
    String base = "../engine/src/test/resources/quiz";
    String quiz = shared.resolve("quiz").toString();
    assertEquals(
        0,
        shell.run("quiz", base, "morning", "--seed", "7", "--participants", "8", "--to", quiz),
        shell::err);
    Participants participants = new Participants(shared.resolve("quiz/quiz.json"));
    Path results = shared.resolve("results");
    for (int i = 0; i < NAMES.size(); i++) {
      participants.handIn(results, i + 1, NAMES.get(i), "2026-04-15T09:00", 1);
    }
    participants.handIn(results, 8, "Late Lee", "2026-06-01T09:00", 1);
    grades = shared.resolve("grades");
    assertEquals(
        0, shell.run("grade", quiz, results.toString(), "--to", grades.toString()), shell::err);
    made = made("made");
    scored = made("scored", "--with-score");
  }

  private static Path made(String name, String... more) {
    Shell shell = new Shell();
    Path to = shared.resolve(name);
    Stream<String> first = Stream.of("certificates", grades.toString(), "--to", to.toString());
    assertEquals(
        0, shell.run(Stream.concat(first, Stream.of(more)).toArray(String[]::new)), shell::err);
    return to;
  }

  /** The grades with another text, and one participant alone. */
  private String alone(String from, String into) throws IOException {
    ObjectNode file =
        (ObjectNode) new ObjectMapper().readTree(grades.resolve("grades.json").toFile());
    JsonNode last = file.get("participants").get(NAMES.size() - 1);
    file.putArray("participants").add(last);
    String text = new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(file);
    Path copy = folder.resolve("grades.json");
    return Files.writeString(copy, text.replace(from, into)).toString();
  }

  private int certificates(Path to, String... more) {
    Stream<String> first = Stream.of("certificates", grades.toString(), "--to", to.toString());
    return shell.run(Stream.concat(first, Stream.of(more)).toArray(String[]::new));
  }

  private static JsonNode register(Path to) throws IOException {
    return new ObjectMapper().readTree(to.resolve("register/register.json").toFile());
  }

  private static Path file(Path to, int index, String ending) throws IOException {
    String number = register(to).get("certificates").get(index).get("number").asText();
    return to.resolve("certificates/" + number + ending);
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      assertEquals(1, document.getNumberOfPages());
      return new PDFTextStripper().getText(document);
    }
  }

  @Test
  void everybodyWhoPassedInTimeGetsOne() throws IOException {
    Path to = scored;
    JsonNode all = register(to).get("certificates");
    assertEquals(NAMES.size(), all.size(), "who was late has none");
    assertEquals(NAMES.get(5), all.get(5).get("name").asText());
    assertEquals(8, all.get(0).get("right").asInt());
    String csv = Files.readString(to.resolve("register/register.csv"));
    assertTrue(csv.contains("\"'=Eve <b>&amp; \"\"Co\"\"\""), csv);
    assertTrue(Files.readString(to.resolve("personal-data.txt")).contains("To delete it"));
    String text = text(file(to, 0, ".pdf"));
    for (String part :
        List.of("Ada Nør", "A morning about ice", "held on 2026-04-14", "8 of 8 items right")) {
      assertTrue(text.contains(part), text);
    }
    assertFalse(text(file(made, 0, ".pdf")).contains("items right"));
  }

  /** Names are read from the page as they were written; letters that join are not lost. */
  @Test
  void namesOfAnyScriptAreOnThePageAndWithinIt() throws IOException {
    Path to = made;
    assertEquals(80, LONG.codePointCount(0, LONG.length()));
    assertEquals(
        LONG,
        text(file(to, 1, ".pdf"))
            .lines()
            .skip(2)
            .limit(2)
            .reduce((a, b) -> a.strip() + " " + b.strip())
            .orElseThrow());
    assertTrue(text(file(to, 2, ".pdf")).contains(ARABIC), text(file(to, 2, ".pdf")));
    assertTrue(text(file(to, 3, ".pdf")).contains(JAPANESE), text(file(to, 3, ".pdf")));
    for (int i = 1; i < 4; i++) {
      assertInkStaysWithinTheFrame(file(to, i, ".pdf"));
    }
  }

  /**
   * Between the frame and the edge of the paper nothing is drawn, nor left of the frame's inside.
   */
  private static void assertInkStaysWithinTheFrame(Path pdf) throws IOException {
    BufferedImage page = page(pdf, 72);
    for (int y = 0; y < page.getHeight(); y++) {
      for (int x : new int[] {10, 20, 44, 60, page.getWidth() - 60, page.getWidth() - 10}) {
        boolean code = x == page.getWidth() - 60 && y > 430;
        boolean frame = y < 40 || y > page.getHeight() - 40;
        assertTrue(code || frame || (page.getRGB(x, y) & 0xFF) > 200, pdf + " " + x + "," + y);
      }
    }
  }

  private static BufferedImage page(Path pdf, int dpi) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFRenderer(document).renderImageWithDPI(0, dpi);
    }
  }

  /** From the printed code to the register: ZXing reads it as a camera would. */
  @Test
  void theCodeLeadsToTheRegister() throws Exception {
    Path to = made;
    BufferedImage page = page(file(to, 2, ".pdf"), 200);
    int[] pixels = page.getRGB(0, 0, page.getWidth(), page.getHeight(), null, 0, page.getWidth());
    RGBLuminanceSource light = new RGBLuminanceSource(page.getWidth(), page.getHeight(), pixels);
    String said =
        new MultiFormatReader().decode(new BinaryBitmap(new HybridBinarizer(light))).getText();
    Matcher parts = Pattern.compile("Certificate (\\S+), check value ([0-9a-f]{16})").matcher(said);
    assertTrue(parts.matches(), said);
    assertEquals(0, shell.run("verify-certificate", to.toString(), parts.group(1), parts.group(2)));
    assertTrue(shell.out().startsWith("holds\n  " + ARABIC + "\n"), shell.out());
  }

  @Test
  void theRegisterTellsWhatDoesNotHold() throws IOException {
    Path to = made;
    JsonNode first = register(to).get("certificates").get(0);
    String number = first.get("number").asText();
    String check = first.get("check").asText();
    String typed = check.replaceAll("(.{4})", "$1 ").toUpperCase(Locale.ROOT);
    String register = to.resolve("register/register.json").toString();
    assertEquals(0, shell.run("verify-certificate", register, number, typed), shell::out);
    String other = (check.startsWith("0") ? "1" : "0") + check.substring(1);
    assertEquals(1, shell.run("verify-certificate", register, number, other));
    assertTrue(shell.out().contains("check value"), shell.out());
    assertEquals(1, shell.run("verify-certificate", register, number + "x", check));
    assertTrue(shell.out().contains("did you mean " + number), shell.out());
    assertEquals(2, shell.run("verify-certificate", grades + "/grades.json", number, check));
    assertTrue(shell.err().contains("expected `register of certificates`"), shell.err());
  }

  /** The check value follows from the quiz and not from the others who handed in. */
  @Test
  void theSameGivesTheSameBytesAndAnotherNameAnotherValue() throws IOException {
    Path again = folder.resolve("again");
    assertEquals(0, certificates(again), shell::err);
    assertTrue(shell.out().contains("badges are not signed"), shell.out());
    for (Map.Entry<String, byte[]> file : bytes(made).entrySet()) {
      assertArrayEquals(file.getValue(), bytes(again).get(file.getKey()), file.getKey());
    }
    String zoe = register(made).get("certificates").get(6).toString();
    assertEquals(0, shell.run("certificates", alone("", ""), "--to", again.toString()));
    assertEquals(zoe, register(again).get("certificates").get(0).toString());
    assertEquals(0, shell.run("certificates", alone("Zoë", "Zoé"), "--to", again.toString()));
    assertFalse(zoe.contains(register(again).get("certificates").get(0).get("check").asText()));
  }

  private static Map<String, byte[]> bytes(Path folder) throws IOException {
    Map<String, byte[]> bytes = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        bytes.put(folder.relativize(file).toString(), Files.readAllBytes(file));
      }
    }
    return bytes;
  }

  private static void assertValid(String badge) {
    assertEquals(
        List.of(),
        BADGE
            .validate(
                badge,
                InputFormat.JSON,
                context -> context.executionConfig(c -> c.formatAssertionsEnabled(true)))
            .stream()
            .map(Object::toString)
            .toList());
  }

  /** Valid by a schema of our own, written from the published standard. */
  @Test
  void badgesWithoutAKeySaySo() throws IOException {
    for (Path to : List.of(scored, made)) {
      for (int i = 0; i < NAMES.size(); i++) {
        String badge = Files.readString(file(to, i, ".unsigned.json"));
        assertValid(badge);
        JsonNode json = new ObjectMapper().readTree(badge);
        JsonNode subject = json.get("credentialSubject");
        assertEquals(NAMES.get(i), subject.get("identifier").get(0).get("identityHash").asText());
        assertTrue(json.get("description").asText().startsWith("Not signed."));
      }
    }
  }

  /** The claims of a token repeat the credential, as the standard asks (JSON Web Token proof). */
  @Test
  void signedBadgesRepeatTheirClaims() throws Exception {
    KeyPair pair = KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
    Path secret = pem("PRIVATE KEY", pair.getPrivate().getEncoded());
    Path known = pem("PUBLIC KEY", pair.getPublic().getEncoded());
    Path to =
        made(
            "signed",
            "--key",
            secret.toString(),
            "--public-key",
            known.toString(),
            "--issuer",
            "https://x.example/trainer");
    String token = Files.readString(file(to, 2, ".jwt"));
    assertTrue(token.matches("[\\w-]+\\.[\\w-]+\\.[\\w-]+"), "one line without an end");
    byte[] payload = Base64.getUrlDecoder().decode(token.split("\\.")[1]);
    assertFalse(
        BADGE.validate("{\"id\": \"x\"}", InputFormat.JSON).isEmpty(), "the schema does judge");
    assertValid(new String(payload, StandardCharsets.UTF_8));
    ObjectNode badge = (ObjectNode) new ObjectMapper().readTree(payload);
    assertEquals("https://x.example/trainer", badge.get("iss").asText());
    assertEquals(badge.get("issuer").get("id"), badge.get("iss"));
    assertEquals(badge.get("id"), badge.get("jti"));
    assertEquals(badge.get("credentialSubject").get("id"), badge.get("sub"));
    assertEquals("2026-04-14T00:00:00Z", badge.get("validFrom").asText());
    assertEquals(1776124800L, badge.get("nbf").asLong());
    assertFalse(Files.exists(file(to, 2, ".unsigned.json")));
  }

  private Path pem(String label, byte[] bytes) throws IOException {
    String text = Base64.getMimeEncoder().encodeToString(bytes);
    return Files.writeString(
        folder.resolve(label.replace(' ', '-') + ".pem"),
        "-----BEGIN " + label + "-----\n" + text + "\n-----END " + label + "-----\n");
  }

  /** The library that draws PDF brings a font with old letters of Cyrillic that ours lack. */
  @Test
  void whatNoFontDrawsIsRefusedByNameUntilAFontIsGiven() throws IOException {
    String copy = alone("Zoë", "Ѻлег");
    String to = folder.resolve("made").toString();
    assertEquals(2, shell.run("certificates", copy, "--to", to));
    assertTrue(
        shell.err().contains("of `Ѻлег`: no font has the character Ѻ (U+047A)"), shell.err());
    assertFalse(Files.exists(folder.resolve("made")));
    Path font = folder.resolve("more.ttf");
    try (InputStream file =
        PDDocument.class.getResourceAsStream(
            "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf")) {
      Files.copy(file, font);
    }
    assertEquals(
        0, shell.run("certificates", copy, "--to", to, "--font", font.toString()), shell::err);
    assertTrue(text(file(Path.of(to), 0, ".pdf")).contains("Ѻлег"));
    assertEquals(2, shell.run("certificates", copy, "--to", to, "--font", copy));
    assertTrue(shell.err().contains("is not a TrueType font"), shell.err());
  }

  @Test
  void gradesThatAreNotThereAreSaid() {
    String to = folder.resolve("made").toString();
    assertEquals(2, shell.run("certificates", folder.resolve("none").toString(), "--to", to));
    assertTrue(shell.err().contains("none` cannot be read"), shell.err());
    assertEquals(2, shell.run("verify-certificate", to, "0b1c2d3e-007", "ede2"));
    assertTrue(shell.err().contains("made` cannot be read"), shell.err());
  }

  @Test
  void gradesAndTheRegisterOfAnotherQuizAreKept() throws IOException {
    String all = grades.toString();
    assertEquals(2, shell.run("certificates", all, "--to", all));
    assertTrue(shell.err().contains("holds grades"), shell.err());
    Path to = folder.resolve("made");
    assertEquals(0, certificates(to), shell::err);
    byte[] register = Files.readAllBytes(to.resolve("register/register.json"));
    String print =
        new ObjectMapper().readTree(grades.resolve("grades.json").toFile()).get("quiz").asText();
    String other = alone(print, "ffffffffffffffff");
    assertEquals(2, shell.run("certificates", other, "--to", to.toString()));
    assertTrue(shell.err().contains("holds the register of another quiz"), shell.err());
    assertArrayEquals(register, Files.readAllBytes(to.resolve("register/register.json")));
  }

  @Test
  void whereNobodyPassedNothingIsWritten() throws IOException {
    String none = alone("\"passed\" : true", "\"passed\" : false");
    Path to = folder.resolve("made");
    assertEquals(1, shell.run("certificates", none, "--to", to.toString()));
    assertTrue(shell.err().contains("nobody passed in time"), shell.err());
    assertFalse(Files.exists(to));
  }

  @Test
  void wrongUseIsSaid() throws IOException {
    assertEquals(2, certificates(folder.resolve("made"), "--key", "x"));
    assertTrue(shell.err().contains("`--key` and `--public-key` go together"), shell.err());
    String copy = alone("\"2026-04-14\"", "null");
    String to = folder.resolve("made").toString();
    assertEquals(2, shell.run("certificates", copy, "--to", to));
    assertTrue(shell.err().contains("the session has no date"), shell.err());
    assertEquals(
        0, shell.run("certificates", copy, "--to", to, "--date", "2026-05-02"), shell::err);
    assertTrue(text(file(Path.of(to), 0, ".pdf")).contains("held on 2026-05-02"));
  }
}
