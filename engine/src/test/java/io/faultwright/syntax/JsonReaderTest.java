package io.faultwright.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.Node.Scalar;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class JsonReaderTest {
  private final Problems problems = new Problems();

  private Tree read(String text) {
    return JsonReader.read(SourceFile.of("a.json", text), problems);
  }

  /** RFC 8259: escapes, numbers, the three words, and empty lists and objects. */
  @Test
  void readsEveryKindOfValueWithItsPlace() {
    MapNode root =
        (MapNode)
            read("{\n  \"a\": \"x\\u00e9\\/\\ud83d\\ude00\",\n\t\"b\":[1, null,true,{}]}")
                .root()
                .orElseThrow();
    assertTrue(problems.isEmpty());
    Scalar text = (Scalar) root.entries().get(0).value();
    assertEquals("xé/😀", text.text());
    assertTrue(text.quoted());
    assertEquals(new Place("a.json", 2, 8, 23), text.place());
    ListNode list = (ListNode) root.entries().get(1).value();
    assertEquals(new Scalar("1", false, new Place("a.json", 3, 7, 1)), list.items().get(0));
    assertEquals(new Scalar("", false, new Place("a.json", 3, 10, 4)), list.items().get(1));
    assertEquals("a map", list.items().get(3).kind());
  }

  /** Columns count characters, not halves of them. */
  @Test
  void countsColumnsInCharacters() {
    ListNode root = (ListNode) read("[\"😀😀\", 7]").root().orElseThrow();
    assertEquals(8, root.items().get(1).place().column());
  }

  private List<Problem> wrong(String text) {
    assertEquals(new Tree("a.json", Optional.empty(), false), read(text));
    return problems.sorted();
  }

  private static Problem only(List<Problem> problems) {
    assertEquals(1, problems.size(), problems::toString);
    return problems.get(0);
  }

  @Test
  void saysWhereItIsNoJson() {
    Problem problem = only(wrong("{\"a\": 1,\n \"b\": oops}"));
    assertEquals("expected JSON, found `o`", problem.message());
    assertEquals(2, problem.places().get(0).line());
  }

  @Test
  void saysWhereAFileIsCutOff() {
    assertEquals("the file ends in the middle", only(wrong("{\"a\": [1, 2")).message());
  }

  /** Wherever a file is cut, that is what is said. */
  @Test
  void knowsACutFileWhereverItIsCut() {
    String whole = "{\"a\": [1, 25, true, \"x\\n\"],\n \"b\": null}";
    for (int length = 1; length < whole.length(); length++) {
      Problems found = new Problems();
      JsonReader.read(SourceFile.of("a.json", whole.substring(0, length)), found);
      assertEquals("the file ends in the middle", only(found.sorted()).message(), "at " + length);
    }
  }

  @Test
  void refusesANameThatStandsTwice() {
    assertEquals(
        "`a` stands twice in the same object", only(wrong("{\"a\": 1, \"a\": 2}")).message());
  }

  @Test
  void refusesWhatFollowsTheEnd() {
    assertEquals("something stands after the end of the JSON", only(wrong("{} 1")).message());
  }

  @Test
  void refusesAnEmptyFile() {
    assertEquals("the file is empty", only(wrong("  \n")).message());
  }

  @Test
  void refusesADeepOne() {
    assertTrue(only(wrong("[".repeat(60))).message().contains("nested"));
  }
}
