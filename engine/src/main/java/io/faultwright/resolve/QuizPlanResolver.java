package io.faultwright.resolve;

import io.faultwright.diagnostic.NearMatch;
import io.faultwright.model.Difficulty;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.OwnItem;
import io.faultwright.model.QuizPlan;
import io.faultwright.model.QuizPlan.Issued;
import io.faultwright.model.QuizPlan.Line;
import io.faultwright.source.Place;
import io.faultwright.syntax.Node;
import io.faultwright.syntax.Node.Entry;
import io.faultwright.syntax.Node.Scalar;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what the quiz of a session asks. */
final class QuizPlanResolver {
  private static final List<String> KEYS =
      List.of("items", "pass-mark", "blueprint", "own-items", "issued");
  private static final List<String> LINE_KEYS = List.of("symptom", "items", "difficulty");
  private static final Pattern WHOLE = Pattern.compile("[1-9][0-9]{0,2}");
  private static final Pattern SHARE = Pattern.compile("([1-9][0-9]?|100) ?%");
  private static final int PASS_MARK = 70;

  private final Context context;
  private final OwnItemResolver ownItems;
  private final FootingResolver footings;

  QuizPlanResolver(Context context, KnowledgeBase knowledge) {
    this.context = context;
    this.footings = new FootingResolver(context);
    this.ownItems = new OwnItemResolver(context, knowledge, footings);
  }

  QuizPlan resolve(Place place, Node node, List<String> symptoms) {
    Fields fields = new Fields(node, "`quiz`", place, KEYS, context.problems());
    Optional<Integer> items = fields.requireScalar("items").flatMap(this::whole);
    int passMark = fields.scalar("pass-mark").flatMap(this::share).orElse(PASS_MARK);
    List<Line> blueprint =
        fields.list("blueprint").stream().map(line -> line(line, symptoms)).toList();
    SortedMap<String, OwnItem> own = own(fields, symptoms);
    int blueprinted = blueprint.stream().mapToInt(Line::items).sum();
    items.ifPresent(count -> checkCount(fields, count, blueprinted, own.size()));
    return new QuizPlan(place, items.orElse(1), passMark, blueprint, own, issued(fields));
  }

  private void checkCount(Fields fields, int items, int blueprinted, int own) {
    int planned = blueprinted + own;
    if (blueprinted > 0 && planned != items) {
      context
          .problems()
          .add(
              fields.place("items"),
              "`items` is " + items + ", the blueprint and the own items make " + planned,
              "write `items: " + planned + "`, or change the blueprint");
    } else if (own > items) {
      context
          .problems()
          .add(
              fields.place("items"),
              "`items` is " + items + ", there are " + own + " own items",
              "write more items");
    }
  }

  private Line line(Node node, List<String> symptoms) {
    Fields fields =
        new Fields(node, "a line of the blueprint", node.place(), LINE_KEYS, context.problems());
    return new Line(
        node.place(),
        fields.requireScalar("symptom").map(one -> taught(one, symptoms)).orElse(""),
        fields.requireScalar("items").flatMap(this::whole).orElse(1),
        fields.scalar("difficulty").flatMap(this::difficulty));
  }

  /** A symptom that the session teaches. */
  private String taught(Scalar written, Collection<String> symptoms) {
    if (!symptoms.isEmpty() && context.names().known(Kind.SYMPTOM, written.text())) {
      if (!symptoms.contains(written.text())) {
        context
            .problems()
            .add(
                written.place(),
                "the session does not teach " + Words.quoted(written.text()),
                "it teaches " + Words.quoted(symptoms));
      }
      return written.text();
    }
    return context.names().reference(Kind.SYMPTOM, written);
  }

  private Optional<Difficulty> difficulty(Scalar written) {
    return difficulty(written, context);
  }

  static Optional<Difficulty> difficulty(Scalar written, Context context) {
    Optional<Difficulty> found = Difficulty.of(written.text().strip());
    if (found.isEmpty()) {
      context
          .problems()
          .add(
              written.place(),
              Words.quoted(written.text()) + " is no difficulty",
              NearMatch.help(written.text(), Difficulty.words()));
    }
    return found;
  }

  private Optional<Integer> whole(Scalar written) {
    return number(written, WHOLE, 0, "is not a number of items", "write a whole number, 1 to 999");
  }

  private Optional<Integer> share(Scalar written) {
    return number(written, SHARE, 1, "is not a pass mark", "write it as in `70 %`");
  }

  private Optional<Integer> number(
      Scalar written, Pattern form, int group, String message, String help) {
    Matcher matcher = form.matcher(written.text().strip());
    if (!matcher.matches()) {
      context.problems().add(written.place(), Words.quoted(written.text()) + " " + message, help);
      return Optional.empty();
    }
    return Optional.of(Integer.parseInt(matcher.group(group)));
  }

  private SortedMap<String, OwnItem> own(Fields fields, List<String> symptoms) {
    SortedMap<String, OwnItem> own = new TreeMap<>();
    for (Entry entry : fields.map("own-items")) {
      Ids.check(Kind.ITEM, entry.key(), context.problems());
      OwnItem item = ownItems.resolve(Definition.of(Kind.ITEM, entry), symptoms);
      own.put(item.id(), item);
    }
    return own;
  }

  private SortedMap<String, Issued> issued(Fields fields) {
    SortedMap<String, Issued> issued = new TreeMap<>();
    for (Entry entry : fields.map("issued")) {
      Definition definition = Definition.of(Kind.ITEM, entry);
      footings
          .resolve(Fields.of(definition, FootingResolver.KEYS, context.problems()), true)
          .ifPresent(
              footing ->
                  issued.put(
                      definition.id(), new Issued(definition.place(), definition.id(), footing)));
    }
    return issued;
  }
}
