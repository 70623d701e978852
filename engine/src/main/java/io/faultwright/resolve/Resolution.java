package io.faultwright.resolve;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Problems;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.model.Equipment;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Session;
import io.faultwright.source.Place;
import io.faultwright.source.SourceFile;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.ListNode;
import io.faultwright.syntax.Node.MapNode;
import io.faultwright.syntax.YamlReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/** A knowledge base that can also read cases from outside its folder. */
public final class Resolution {
  private final KnowledgeBase knowledge;
  private final SortedMap<String, Session> sessions;
  private final Outline outline;

  Resolution(KnowledgeBase knowledge, SortedMap<String, Session> sessions, Outline outline) {
    this.knowledge = knowledge;
    this.sessions = sessions;
    this.outline = outline;
  }

  public KnowledgeBase knowledge() {
    return knowledge;
  }

  /** The training sessions of its folder, by id; they speak about it and are no part of it. */
  public SortedMap<String, Session> sessions() {
    return sessions;
  }

  /** What is wrong with rows that are to stand in a table of limits instead of its own. */
  public List<Problem> rowProblems(String reading, List<Node> rows) {
    Problems problems = new Problems();
    Context context = Context.of(outline, problems);
    Definition table = outline.of(Kind.LIMITS).get(reading);
    new LimitsResolver(context, subjects(context)).resolve(withRows(table, rows));
    return problems.sorted();
  }

  private static Definition withRows(Definition table, List<Node> rows) {
    List<Entry> entries = new ArrayList<>();
    for (Entry entry : ((MapNode) table.body()).entries()) {
      boolean replaced = entry.name().equals("rows");
      Node value = replaced ? new ListNode(rows, entry.value().place()) : entry.value();
      entries.add(new Entry(entry.key(), value));
    }
    return new Definition(table.what(), table.key(), new MapNode(entries, table.place()));
  }

  private Subjects subjects(Context context) {
    Subjects subjects = new Subjects(context, knowledge.equipment(), true);
    knowledge.readings().values().forEach(subjects::add);
    return subjects;
  }

  /**
   * What a file says about the columns of a table.
   *
   * @throws Unreadable with every problem of the file
   */
  public ColumnMap columns(SourceFile file) {
    Problems problems = new Problems();
    Optional<Node> root = YamlReader.read(file, problems).root();
    Context context = Context.of(outline, problems);
    ColumnMap map =
        root.map(node -> new ColumnMapResolver(context, subjects(context), knowledge).resolve(node))
            .orElse(ColumnMap.NONE);
    if (root.isEmpty() && problems.isEmpty()) {
      String help = "write `columns:`, and below it a line for each heading";
      problems.add(new Place(file.path(), 1, 1, 1), "the column map is empty", help);
    }
    if (!problems.isEmpty()) {
      throw new Unreadable(problems.sorted());
    }
    return map;
  }

  /** Reads cases one after the other. */
  public CaseIntake intake() {
    return new CaseIntake(this::resolver);
  }

  private CaseResolver resolver(Problems problems) {
    Context context = Context.of(outline, problems);
    Optional<Equipment> equipment = Optional.of(knowledge.equipment());
    return new CaseResolver(
        context,
        subjects(context),
        knowledge.symptoms(),
        new CaseLogResolver(context, knowledge.sequences(), knowledge.readings(), equipment),
        equipment);
  }
}
