package io.faultwright.quiz;

import io.faultwright.model.Fault.Step;
import io.faultwright.model.Guide;
import io.faultwright.model.KnowledgeBase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Steps of the handbook that stand in an order: looked up anew in each language.
 *
 * @param page on which they stand
 * @param part of the page
 * @param number of a numbered list of a guide, counted from 0; 0 for other pages
 */
public record StepList(Link page, Part part, int number) {
  private static final Pattern NUMBERED = Pattern.compile("\\d{1,2}[.)] +(.*)");
  private static final Pattern LINK = Pattern.compile("\\[([^\\]]*)]\\([^)]*\\)");
  private static final Pattern MARKS = Pattern.compile("\\*\\*|__|`|(?<!\\w)[*_]|[*_](?!\\w)");

  /** The parts of pages that are lists of steps. */
  public enum Part {
    REMEDY,
    VERIFY,
    HOW,
    GUIDE
  }

  /**
   * A step, or the caution before one.
   *
   * @param step its position in the list, counted from 0
   * @param caution id of the caution that stands before it; absent for the step itself
   */
  public record Entry(int step, Optional<String> caution) {
    public static Entry of(int step) {
      return new Entry(step, Optional.empty());
    }
  }

  /** The steps in their order, as plain text; none where there is no such list. */
  public List<String> texts(KnowledgeBase kb) {
    return switch (part) {
      case REMEDY -> steps(kb).stream().map(Step::text).toList();
      case VERIFY -> steps(kb).stream().map(Step::text).toList();
      case HOW ->
          Optional.ofNullable(kb.readings().get(page.id()))
              .map(reading -> reading.how())
              .orElse(List.of());
      case GUIDE ->
          Optional.ofNullable(kb.guides().get(page.id())).map(StepList::lists).stream()
              .flatMap(lists -> lists.stream().skip(number).limit(1))
              .findFirst()
              .orElse(List.of());
    };
  }

  /** The steps of a fault's remedy or verification; none for other pages. */
  public List<Step> steps(KnowledgeBase kb) {
    return Optional.ofNullable(kb.faults().get(page.id()))
        .filter(fault -> page.kind() == Link.Kind.FAULT)
        .map(fault -> part == Part.REMEDY ? fault.remedy() : fault.verify())
        .orElse(List.of());
  }

  /** The numbered lists of a guide, as plain text. */
  public static List<List<String>> lists(Guide guide) {
    List<List<String>> lists = new ArrayList<>();
    List<String> open = new ArrayList<>();
    boolean code = false;
    for (String line : guide.markdown().lines().toList()) {
      code ^= line.startsWith("```") || line.startsWith("~~~");
      Matcher step = NUMBERED.matcher(line);
      if (!code && step.matches()) {
        open.add(plain(step.group(1)));
      } else if (!line.isBlank() && !open.isEmpty()) {
        lists.add(List.copyOf(open));
        open.clear();
      }
    }
    if (!open.isEmpty()) {
      lists.add(List.copyOf(open));
    }
    return lists;
  }

  private static String plain(String markdown) {
    return MARKS.matcher(LINK.matcher(markdown).replaceAll("$1")).replaceAll("").strip();
  }
}
