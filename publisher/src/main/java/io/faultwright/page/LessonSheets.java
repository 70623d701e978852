package io.faultwright.page;

import io.faultwright.diagnostic.Problem;
import io.faultwright.diagnostic.Unreadable;
import io.faultwright.layout.Paper;
import io.faultwright.model.Session;
import io.faultwright.model.Session.OwnPage;
import io.faultwright.model.Symptom;
import io.faultwright.page.LessonDrawing.Setting;
import io.faultwright.page.LessonSheet.Chart;
import io.faultwright.page.LessonSheet.Closing;
import io.faultwright.page.LessonSheet.Complaint;
import io.faultwright.page.LessonSheet.Hazards;
import io.faultwright.page.LessonSheet.Leaf;
import io.faultwright.page.LessonSheet.Opening;
import io.faultwright.page.LessonSheet.Prose;
import io.faultwright.page.LessonSource.Drawn;
import io.faultwright.page.Target.Kind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Puts the pages of a session in their order: what can hurt first, then complaint by complaint. */
public final class LessonSheets {
  private static final int CAUTIONS_A_PAGE = 3;

  private final LessonSource source;
  private final Setting setting;
  private final Desk desk;
  private final LessonTexts texts;

  private LessonSheets(LessonSource source, Setting setting) {
    this.source = source;
    this.setting = setting;
    this.desk = Desk.of(source.kb(), new LessonAddresses());
    this.texts = new LessonTexts(source.kb(), source.pictures());
  }

  /**
   * The pages for a screen.
   *
   * @throws Unreadable where a link or a picture of a text leads nowhere
   */
  public static LessonSheet onScreen(LessonSource source) {
    return new LessonSheets(source, LessonDrawing.ON_SCREEN).sheet();
  }

  /**
   * The pages for paper, each chart on a sheet of its own.
   *
   * @throws Unreadable as above
   */
  public static LessonSheet onPaper(LessonSource source, Paper paper) {
    return new LessonSheets(source, LessonDrawing.onPaper(paper)).sheet();
  }

  private LessonSheet sheet() {
    List<Leaf> leaves = new ArrayList<>(List.of(opening()));
    leaves.addAll(hazards());
    source.session().pages().stream().map(this::own).forEach(leaves::add);
    source.session().symptoms().stream()
        .map(source.kb().symptoms()::get)
        .forEach(symptom -> complaint(symptom, leaves));
    leaves.addAll(new LessonSequences(desk, setting, source.session()).leaves());
    for (int i = 0; i < source.examples().size(); i++) {
      leaves.addAll(new LessonExample(desk, setting, source.examples().get(i), i + 1).leaves());
    }
    source.session().quiz().ifPresent(quiz -> leaves.add(closing()));
    List<Problem> problems = texts.problems();
    if (!problems.isEmpty()) {
      throw new Unreadable(problems);
    }
    return new LessonSheet(
        Frames.of(source.kb().handbook(), source.draft()), source.session().title(), leaves);
  }

  private Leaf opening() {
    Session session = source.session();
    List<Fact> facts = new ArrayList<>();
    session.date().map(LocalDate::toString).ifPresent(date -> fact(facts, desk.say("Date"), date));
    if (!session.families().isEmpty()) {
      fact(
          facts,
          desk.say("Equipment"),
          desk.words().say().and(session.families().stream().map(this::family).toList()));
    }
    session.symptoms().stream()
        .map(id -> desk.words().symptom(id))
        .forEach(title -> fact(facts, desk.say("Complaint"), title));
    return new Opening(
        session.title(), texts.html(session.about(), session.title(), session.place()), facts);
  }

  private static void fact(List<Fact> facts, String label, String text) {
    facts.add(new Fact(label, text));
  }

  private String family(String id) {
    return desk.kb().equipment().families().get(id).title();
  }

  /** Every caution that a reading or a repair of the session brings, gravest first. */
  private List<Leaf> hazards() {
    TreeSet<String> ids = new TreeSet<>();
    for (String symptom : source.session().symptoms()) {
      readings(symptom).forEach(id -> ids.addAll(desk.kb().readings().get(id).cautions()));
      desk.uses().faultsOf(symptom).forEach(id -> ids.addAll(ofFault(id)));
    }
    List<CautionPanel> panels = new Cautions(desk).of(ids);
    List<Leaf> pages = new ArrayList<>();
    for (int i = 0; i < panels.size(); i += CAUTIONS_A_PAGE) {
      List<CautionPanel> some = panels.subList(i, Math.min(panels.size(), i + CAUTIONS_A_PAGE));
      pages.add(new Hazards(desk.say("What can hurt you"), some));
    }
    return pages;
  }

  private Collection<String> readings(String symptom) {
    return desk.uses().readingsOf(symptom);
  }

  private Collection<String> ofFault(String id) {
    var fault = desk.kb().faults().get(id);
    return Stream.concat(
            fault.cautions().stream(),
            Stream.concat(fault.remedy().stream(), fault.verify().stream())
                .flatMap(step -> step.cautions().stream()))
        .toList();
  }

  private Leaf own(OwnPage page) {
    return new Prose(page.title(), texts.html(page.text(), page.title(), page.place()));
  }

  private void complaint(Symptom symptom, List<Leaf> leaves) {
    Clauses clauses = new Clauses(desk);
    leaves.add(
        new Complaint(
            new Target(Kind.SYMPTOM, symptom.id()).anchor(),
            symptom.title(),
            symptom.about(),
            clauses.of(symptom.applies()),
            clauses.of(symptom.recognise()),
            symptom.first().stream()
                .map(
                    first ->
                        new FirstItem(
                            clauses.of(first.when()), desk.links().symptom(first.otherwise())))
                .toList()));
    source.charts().getOrDefault(symptom.id(), List.of()).stream()
        .flatMap(drawn -> chart(symptom, drawn))
        .forEach(leaves::add);
  }

  private Stream<Leaf> chart(Symptom symptom, Drawn drawn) {
    String over =
        drawn.scope().isEmpty() ? symptom.title() : symptom.title() + ": " + drawn.scope();
    String title =
        drawn.count() == 1
            ? desk.say("Chart")
            : desk.say("Chart, page {0} of {1}", drawn.number(), drawn.count());
    return setting.chart(drawn, over + ", " + title).stream()
        .map(drawing -> new Chart(over, title, drawing));
  }

  private Leaf closing() {
    Session session = source.session();
    List<Fact> facts = new ArrayList<>();
    session
        .quiz()
        .ifPresent(
            quiz -> {
              fact(facts, desk.say("Items"), Integer.toString(quiz.items()));
              fact(facts, desk.say("Pass mark"), quiz.passMark() + " %");
            });
    session
        .handInBy()
        .map(LocalDate::toString)
        .ifPresent(day -> fact(facts, desk.say("Hand in by"), day));
    return new Closing(desk.say("The quiz"), facts);
  }
}
