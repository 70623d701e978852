package io.faultwright.release;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Signed;
import io.faultwright.model.SignedKind;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class MeaningTest {
  private static final Path FOLDER = Path.of("src/test/resources/knowledge/freezer");
  private static final Path STORED = Path.of("src/test/resources/meanings/freezer.txt");
  private static final boolean BLESS =
      Boolean.getBoolean("bless") && !"true".equals(System.getenv("CI"));

  private static final String HEAD =
      """
      handbook:
        { title: Small, maker: Brantmoor Cold, revision: "1", date: 2026-03-02, language: en,
          disclaimer: Made up. }
      """;
  private static final String RULES =
      """
      readings:
        coil: { ask: "How cold is the coil?", unit: °C, range: -50 to 50 }
        fan: { ask: "Does the fan run?", values: yes/no }
      faults:
        dead: { title: Fan dead, remedy: [Isolate it., Replace it.], verify: [Feel the air.] }
      symptoms:
        warm:
          title: Too warm
          rules:
            stands: { when: { fan: no, coil: above 5 °C }, conclude: dead, because: So. }
      """;

  /** If a text changes here, the signatures under all handbooks lapse. */
  @Test
  void theTextsAreWhatTheyWere() throws IOException {
    KnowledgeBase kb = Resolver.resolve(FolderReader.read(FOLDER));
    Meanings meanings = new Meanings(kb, new TreeMap<>());
    String text =
        Signed.all(kb).stream()
            .map(signed -> "== " + signed + "\n" + meanings.of(signed).text())
            .collect(Collectors.joining("\n"));
    if (BLESS) {
      Files.createDirectories(STORED.getParent());
      Files.writeString(STORED, text);
    }
    assertEquals(Files.readString(STORED), text);
  }

  /** SHA-256 of "abc", from FIPS 180-4's example (NIST, SHA256 example values). */
  @Test
  void hashesAreSha256() {
    assertEquals(
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", Hash.of("abc"));
  }

  @Test
  void otherWordsForTheSameMeanTheSame() {
    String same = hash(RULES);
    assertEquals(same, hash(RULES.replace("above 5 °C", "above 41 °F")));
    assertEquals(
        same, hash(RULES.replace("fan: no, coil: above 5 °C", "coil: above 5 °C, fan: [no]")));
    assertEquals(
        same,
        hash(
            "# A remark\n"
                + RULES
                    .replace("because: So.", "because: >-\n So.")
                    .replace(
                        "{ when: { fan: no, coil: above 5 °C }, conclude: dead, because: >-\n So. }",
                        "{ because: \"So.\", conclude: [dead], when: { all: [ { fan: no }, { coil: above 5 °C } ] } }")));
  }

  @Test
  void whatATechnicianIsToldOrTheRulesDecideCounts() {
    Map<String, String> changes =
        Map.of(
            "above 5 °C", "at least 5 °C",
            "5 °C }", "6 °C }",
            "unit: °C, range: -50 to 50", "unit: °F, range: -50 to 125",
            "-50 to 50", "-50 to 40",
            "How cold", "How warm",
            "[Isolate it., Replace it.]", "[Replace it., Isolate it.]",
            "Feel the air.", "Hear the fan.",
            "fan: no", "fan: yes",
            "because: So.", "because: Thus.");
    changes.forEach(
        (before, after) -> {
          String changed = RULES.replace(before, after);
          assertNotEquals(RULES, changed, before);
          assertNotEquals(hash(RULES), hash(changed), before + " -> " + after);
        });
  }

  /** A rule that lies elsewhere is another one, even if it reads the same. */
  @Test
  void theThingItselfCounts() {
    KnowledgeBase kb = kb(RULES);
    Meanings meanings = new Meanings(kb, new TreeMap<>());
    assertNotEquals(
        meanings.of(Signed.rule("warm", "stands")).hash(),
        meanings.of(new Signed(SignedKind.SYMPTOM, "warm")).hash());
  }

  @Test
  void picturesOfAGuideCount() {
    Sources sources =
        new Sources(
            List.of(
                new SourceFile("handbook.yaml", HEAD + RULES),
                new SourceFile("guides/gauges.md", "# Gauges\n\n![Hoses](hoses.png)\n")));
    KnowledgeBase kb = Resolver.resolve(sources);
    Signed guide = new Signed(SignedKind.GUIDE, "gauges");
    Meaning one = new Meanings(kb, pictures("one")).of(guide);
    assertTrue(one.parts().containsKey("picture hoses.png"), one.text());
    assertNotEquals(one.hash(), new Meanings(kb, pictures("other")).of(guide).hash());
    assertEquals(one.hash(), new Meanings(kb, pictures("one")).of(guide).hash());
  }

  private static SortedMap<String, byte[]> pictures(String content) {
    SortedMap<String, byte[]> pictures = new TreeMap<>();
    pictures.put("hoses.png", content.getBytes(StandardCharsets.UTF_8));
    pictures.put("not-shown.png", new byte[0]);
    return pictures;
  }

  private static String hash(String rules) {
    return new Meanings(kb(rules), new TreeMap<>()).of(Signed.rule("warm", "stands")).hash();
  }

  private static KnowledgeBase kb(String rules) {
    return Resolver.resolve(new Sources(List.of(new SourceFile("handbook.yaml", HEAD + rules))));
  }
}
