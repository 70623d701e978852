package io.faultwright.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.faultwright.layout.Paper;
import io.faultwright.page.LessonSheet;
import io.faultwright.page.LessonSheet.DisplayPage;
import io.faultwright.page.LessonSheet.Leaf;
import io.faultwright.page.LessonSheet.PhasePage;
import io.faultwright.page.LessonSheet.TimesPage;
import io.faultwright.page.LessonSheet.TimingPage;
import io.faultwright.page.LessonSheets;
import io.faultwright.page.LessonSource;
import io.faultwright.page.SequenceSection.SideBySide;
import io.faultwright.resolve.Resolution;
import io.faultwright.resolve.Resolver;
import io.faultwright.source.SourceFile;
import io.faultwright.source.Sources;
import io.faultwright.syntax.FolderReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The heating cycle on the pages of a session. */
class LessonSequencesTest {
  private static final Path BASE = Path.of("../engine/src/test/resources/sequences/heating-cycle");

  private static final String SESSION =
      """
      sessions:
        morning:
          title: A morning about time
          symptoms: machine-stops
          families: %s
          sequences: { heating-cycle: [stuck-closed, good] }
      """;

  private static LessonSource source(String families) {
    List<SourceFile> files = new ArrayList<>(FolderReader.read(BASE).files());
    files.replaceAll(file -> twoFamilies(file));
    files.add(SourceFile.of("sessions.yaml", SESSION.formatted(families)));
    Resolution read = Resolver.resolution(new Sources(files));
    return Lesson.of(
        read.knowledge(), read.sessions().get("morning"), false, new TreeMap<>(), Paper.A4);
  }

  private static SourceFile twoFamilies(SourceFile file) {
    return SourceFile.of(
        file.path(),
        file.text()
            .replace(
                "{ moss: { title: Moss } }", "{ moss: { title: Moss }, fern: { title: Fern } }")
            .replace("MO-2: { family: moss", "MO-2: { family: fern"));
  }

  private static <T extends Leaf> Stream<T> only(LessonSheet sheet, Class<T> kind) {
    return sheet.leaves().stream().filter(kind::isInstance).map(kind::cast);
  }

  @Test
  void onAScreenEachPhaseHasAPageAndTheCoursesComeInTheOrderOfTheSession() {
    LessonSheet sheet = LessonSheets.onScreen(source("[moss, fern]"));
    assertEquals(
        List.of(
            "1 Standby",
            "2 Draining",
            "3 Heating",
            "4 Releasing",
            "5 Building",
            "6 Stopped as full",
            "7 Stopped after three longest heatings",
            "8 Restart delay"),
        only(sheet, PhasePage.class).map(PhasePage::title).toList());
    assertEquals(
        List.of("The switch never opens", "In good order"),
        only(sheet, DisplayPage.class).map(DisplayPage::title).distinct().toList());
    assertEquals(
        List.of("sequence", "phase", "times", "display", "timing"),
        sheet.leaves().stream()
            .map(Leaf::kind)
            .filter(kind -> !List.of("opening", "hazards", "complaint", "chart").contains(kind))
            .distinct()
            .toList());
  }

  /** What a page shows is numbered on from the page before. */
  @Test
  void longTablesOfDisplaysGoOnOnTheNextPage() {
    LessonSheet screen = LessonSheets.onScreen(source("[moss, fern]"));
    LessonSheet paper = LessonSheets.onPaper(source("[moss, fern]"), Paper.A4);
    String title = "The switch never opens";
    List<DisplayPage> pages =
        only(screen, DisplayPage.class).filter(page -> page.title().equals(title)).toList();
    DisplayPage whole =
        only(paper, DisplayPage.class).filter(page -> page.title().equals(title)).findFirst().get();
    assertTrue(pages.size() > 1, "pages: " + pages.size());
    int before = 0;
    List<Object> rows = new ArrayList<>();
    for (DisplayPage page : pages) {
      assertEquals(before, page.before());
      SideBySide table = page.course().tables().get(0);
      assertTrue(table.rows().size() <= 5, "rows: " + table.rows().size());
      before += table.rows().size();
      rows.addAll(table.rows());
    }
    assertEquals(whole.course().tables().get(0).rows(), rows);
  }

  @Test
  void onPaperTheTableStandsWholeAndDrawingsAreSetApartFromTheirText() {
    LessonSheet paper = LessonSheets.onPaper(source("[moss, fern]"), Paper.A4);
    assertEquals(0, only(paper, PhasePage.class).count());
    assertTrue(only(paper, TimingPage.class).allMatch(page -> !page.timing().texts().isEmpty()));
  }

  /** Draining takes the same everywhere; the restart delay of K2 is of no concern to K1 alone. */
  @Test
  void onlyMachinesThatAreTaughtAreShown() {
    TimesPage both =
        only(LessonSheets.onScreen(source("[moss, fern]")), TimesPage.class).findFirst().get();
    assertEquals(
        List.of("Software: 2.9", "Software: 2.10", "Family: Fern"),
        both.section().times().get(0).machines());
    TimesPage one = only(LessonSheets.onScreen(source("moss")), TimesPage.class).findFirst().get();
    assertEquals(
        List.of("Software: 2.9", "Software: 2.10"), one.section().times().get(0).machines());
    assertFalse(
        one.section().times().toString().contains("2 min"), one.section().times()::toString);
  }
}
