package io.faultwright.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.faultwright.find.Entry.Kind;
import io.faultwright.flow.Demos;
import io.faultwright.json.Json;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.page.Link;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The index of the demonstration handbook. */
class SearchIndexTest {
  private static final KnowledgeBase KB = Demos.all().get(0);
  private static final List<Link> REFRIGERANTS =
      List.of(new Link("R-290: pressure and temperature", "refrigerant/R-290.html"));

  private static SearchIndex index() {
    return SearchIndex.of(Findable.of(KB, REFRIGERANTS));
  }

  private static int number(SearchIndex index, String id) {
    return index.entries().stream().map(Entry::id).toList().indexOf(id);
  }

  private static Weight weight(String term, String id) {
    SearchIndex index = index();
    return index.postings().get(term).get(number(index, id));
  }

  @Test
  void everythingIsFoundOnce() {
    SearchIndex index = index();
    int things =
        KB.symptoms().size()
            + KB.faults().size()
            + KB.readings().size()
            + KB.parts().size()
            + KB.guides().size()
            + KB.sequences().size()
            + KB.equipment().models().size()
            + KB.equipment().families().size()
            + KB.equipment().options().size()
            + REFRIGERANTS.size();
    assertEquals(things, index.entries().size());
    assertEquals(things, index.entries().stream().map(Entry::href).distinct().count());
  }

  @Test
  void aWordCountsByTheBestPlaceItStandsIn() {
    assertEquals(Weight.TITLE, weight("superheat", "superheat"));
    assertEquals(Weight.SYNONYM, weight("rapid", "compressor-short-cycles"));
    assertEquals(Weight.ABOUT, weight("lift", "hot-gas-coil-failed"));
    assertEquals(Weight.TEXT, weight("bc0413", "hot-gas-coil-failed"));
    assertEquals(Weight.TITLE, weight("bc0413", "hot-gas-coil"));
  }

  @Test
  void synonymsLeadToWhatTheyMeanAndNowhereElse() {
    SearchIndex index = index();
    List<Integer> meant = index.synonyms().get("door seal");
    assertEquals(
        List.of(Kind.FAULT, Kind.READING, Kind.PART),
        meant.stream().map(number -> index.entries().get(number).kind()).toList());
    assertEquals(
        Set.copyOf(meant),
        index.postings().get("seal").entrySet().stream()
            .filter(entry -> entry.getValue() == Weight.SYNONYM)
            .map(Map.Entry::getKey)
            .collect(Collectors.toSet()));
  }

  @Test
  void whatOnlySomeFamiliesHaveSaysSo() {
    SearchIndex index = index();
    Entry scar = index.entries().get(number(index, "head-valve-stuck"));
    assertEquals(List.of("scar"), scar.families());
    assertEquals(List.of(), index.entries().get(number(index, "room-too-warm")).families());
    assertEquals(List.of("fell"), index.entries().get(number(index, "FL-12GP1")).families());
  }

  @Test
  void addressesOfLinksInGuidesAreNotWords() {
    SearchIndex index = index();
    assertTrue(index.entries().stream().anyMatch(entry -> entry.kind() == Kind.GUIDE));
    assertFalse(index.postings().containsKey("lowdischargepressure"));
    assertFalse(index.postings().containsKey("superheatandsubcoolingmd"));
  }

  @Test
  void theScriptIsTheSameEachTimeAndInEveryLocale() {
    Locale before = Locale.getDefault();
    try {
      String first = SearchFiles.index(Findable.of(KB, REFRIGERANTS), new TreeMap<>());
      Locale.setDefault(Locale.forLanguageTag("tr-TR-u-nu-arab"));
      assertEquals(first, SearchFiles.index(Findable.of(KB, REFRIGERANTS), new TreeMap<>()));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void theScriptHoldsTheIndexAsData() throws JsonProcessingException {
    SearchIndex index = index();
    SortedMap<String, String> words = new TreeMap<>(Map.of("Faults", "Ursachen"));
    JsonNode data = data(new IndexScript(index, words).text());
    String[] terms = data.get("terms").asText().split(" ");
    String[] postings = data.get("postings").asText().split(" ");
    assertEquals(List.copyOf(index.postings().keySet()), List.of(terms));
    for (int i = 0; i < terms.length; i++) {
      assertEquals(index.postings().get(terms[i]), read(postings[i]), terms[i]);
    }
    assertEquals("Ursachen", data.get("words").get("Faults").asText());
    JsonNode first = data.get("entries").get(number(index, "superheat"));
    assertEquals("reading", first.get(0).asText());
    assertEquals("Superheat", first.get(1).asText());
    assertEquals("reading/superheat.html", first.get(3).asText());
  }

  private static JsonNode data(String script) throws JsonProcessingException {
    String start = "faultwright.index(";
    assertTrue(script.startsWith(start) && script.endsWith(");\n"));
    return new ObjectMapper()
        .readTree(script.substring(start.length(), script.length() - ");\n".length()));
  }

  private static SortedMap<Integer, Weight> read(String postings) {
    SortedMap<Integer, Weight> entries = new TreeMap<>();
    int code = 0;
    for (String step : postings.split(",")) {
      code += Integer.parseInt(step, 36);
      entries.put(code / 4, Weight.values()[code % 4]);
    }
    return entries;
  }

  @Test
  void hostileTextsStayTexts() throws JsonProcessingException {
    String hostile =
        "</script><!-- \" \\ ' \u2028 \u2029 \u0000 \r\n ]]> \uD83D\uDE00 \uD800 ${x} &amp;";
    String written = Json.text(hostile);
    assertEquals(hostile, new ObjectMapper().readTree(written).asText());
    assertTrue(written.chars().noneMatch(c -> c < ' ' || "<\u2028\u2029".indexOf(c) >= 0));
  }

  @Test
  void longContextsAreCutBetweenWords() {
    String line = Line.of("word \n ".repeat(60));
    assertTrue(line.endsWith("word …") && line.length() <= 122, line);
    assertEquals("a b", Line.of(" a\n\tb "));
  }
}
