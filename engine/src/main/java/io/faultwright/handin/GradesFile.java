package io.faultwright.handin;

import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.handin.Marks.Person;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.JsonReader;
import io.faultwright.syntax.Node;
import java.util.List;
import java.util.Optional;

/** Reads {@code grades.json}. */
public final class GradesFile {
  private final Problems problems = new Problems();

  private GradesFile() {}

  /**
   * The marks in a file.
   *
   * @throws Unreadable with everything that keeps it from being grades
   */
  public static Marks read(SourceFile file) {
    GradesFile reader = new GradesFile();
    Optional<Marks> marks = JsonReader.read(file, reader.problems).root().map(reader::marks);
    if (!reader.problems.isEmpty()) {
      throw new Unreadable(reader.problems.sorted());
    }
    return marks.orElseThrow();
  }

  private Marks marks(Node root) {
    Members file = new Members(root, "the file of grades", problems);
    String what = file.text("what").orElse("grades");
    if (!what.equals("grades")) {
      problems.add(
          file.place("what"),
          "expected `grades`, found `" + what + "`",
          "take the `grades.json` that `faultwright grade` wrote");
    }
    return new Marks(
        file.text("quiz").orElse(""),
        file.text("registerKey").orElse(""),
        Course.read(file),
        file.number("passMark").orElse(0),
        file.number("itemsEach").orElse(0),
        people(file));
  }

  private List<Person> people(Members file) {
    return file.list("participants").stream().map(this::person).toList();
  }

  private Person person(Node node) {
    Members person = new Members(node, "a participant", problems);
    return new Person(
        person.number("number").orElse(0),
        person.text("name").orElse(""),
        person.truth("passed").orElse(false),
        person.number("right").orElse(0));
  }
}
