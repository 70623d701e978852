package io.faultwright.analysis.space;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.faultwright.analysis.space.CoupledReadings.Group;
import io.faultwright.model.Condition;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.KnowledgeBaseBuilder;
import io.faultwright.model.LimitsTableBuilder;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Which readings depend on each other. */
class CoupledReadingsTest {
  private static KnowledgeBaseBuilder base() {
    KnowledgeBaseBuilder base = new KnowledgeBaseBuilder().model("A-1", "alpha", Map.of());
    for (String id : List.of("a", "b", "c", "d", "e")) {
      base.measured(id, "K", "0", "9");
    }
    return base.difference("ab", "a", "b").difference("cd", "c", "d").difference("abc", "ab", "c");
  }

  private static KnowledgeBaseBuilder driven(
      KnowledgeBaseBuilder base, String reading, String driver) {
    return base.limits(
        LimitsTableBuilder.stepped(reading, driver)
            .over(Condition.ALWAYS, "0", "9", "1", "2")
            .build());
  }

  private static Group group(String separator, String... core) {
    return new Group(
        new TreeSet<>(Set.of(core)),
        separator.isEmpty() ? Optional.empty() : Optional.of(separator));
  }

  private static void grouped(
      KnowledgeBase knowledge, Set<String> readings, Set<String> judged, Group... groups) {
    assertEquals(
        Set.of(groups),
        Set.copyOf(
            CoupledReadings.groups(knowledge, new TreeSet<>(readings), new TreeSet<>(judged))));
  }

  @Test
  void withAllThatTheyAreComputedFrom() {
    KnowledgeBase knowledge = base().build();
    assertEquals(
        Set.of("abc", "ab", "a", "b", "c"),
        CoupledReadings.withOperands(knowledge, List.of("abc")));
    assertEquals(Set.of("a", "e"), CoupledReadings.withOperands(knowledge, List.of("e", "a")));
  }

  @Test
  void readingsThatAreOnlyObservedStandAlone() {
    grouped(base().build(), Set.of("a", "b", "e"), Set.of());
    grouped(driven(base(), "a", "e").build(), Set.of("a", "e"), Set.of("a"));
  }

  @Test
  void groupsThatShareAReadingAreOne() {
    KnowledgeBase knowledge = base().build();
    grouped(
        knowledge,
        Set.of("ab", "a", "b", "cd", "c", "d"),
        Set.of(),
        group("", "a", "ab", "b"),
        group("", "c", "cd", "d"));
    grouped(
        knowledge,
        Set.of("abc", "ab", "a", "b", "cd", "c", "d"),
        Set.of(),
        group("", "a", "ab", "abc", "b", "c", "cd", "d"));
  }

  @Test
  void whatOnlyDrivesLimitsParts() {
    grouped(
        driven(base(), "a", "e").build(),
        Set.of("a", "b", "ab", "e"),
        Set.of("a"),
        group("e", "a", "ab", "b"));
    grouped(
        driven(base(), "a", "e").build(),
        Set.of("a", "b", "ab"),
        Set.of(),
        group("", "a", "ab", "b"));
  }

  @Test
  void twoGroupsWithOneSeparatorStayApart() {
    KnowledgeBase knowledge = driven(driven(base(), "a", "e"), "c", "e").build();
    grouped(
        knowledge,
        Set.of("a", "b", "ab", "c", "d", "cd", "e"),
        Set.of("a", "c"),
        group("e", "a", "ab", "b"),
        group("e", "c", "cd", "d"));
  }

  @Test
  void whatDrivesAndIsItselfComputedOrJudgedBelongsToTheGroup() {
    grouped(
        driven(base(), "a", "cd").build(),
        Set.of("a", "b", "ab", "c", "d", "cd"),
        Set.of("a"),
        group("", "a", "ab", "b", "c", "cd", "d"));
    grouped(
        driven(driven(base(), "a", "e"), "e", "c").build(),
        Set.of("a", "b", "ab", "c", "e"),
        Set.of("a", "e"),
        group("c", "a", "ab", "b", "e"));
  }

  @Test
  void twoDriversMakeOneWideGroup() {
    grouped(
        driven(driven(base(), "a", "e"), "b", "d").build(),
        Set.of("a", "b", "ab", "d", "e"),
        Set.of("a", "b"),
        group("", "a", "ab", "b", "d", "e"));
  }

  @Test
  void limitsThatSlopeAlongTwoDriversTieAllThree() {
    KnowledgeBase knowledge =
        base()
            .limits(
                LimitsTableBuilder.sloping("a", "d", "e")
                    .at(Condition.ALWAYS, "0", "0", "1", "2")
                    .at(Condition.ALWAYS, "9", "0", "1", "2")
                    .at(Condition.ALWAYS, "0", "9", "1", "2")
                    .at(Condition.ALWAYS, "9", "9", "3", "4")
                    .build())
            .build();
    grouped(knowledge, Set.of("a", "d", "e"), Set.of("a"), group("", "a", "d", "e"));
    grouped(knowledge, Set.of("a", "d", "e"), Set.of());
  }

  @Test
  void allReadingsOfAGroup() {
    assertEquals(Set.of("a", "ab", "b", "e"), group("e", "a", "ab", "b").readings());
  }
}
