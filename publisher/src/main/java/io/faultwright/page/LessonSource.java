package io.faultwright.page;

import io.faultwright.model.Answer;
import io.faultwright.model.Band;
import io.faultwright.model.Build;
import io.faultwright.model.Case;
import io.faultwright.model.KnowledgeBase;
import io.faultwright.model.Session;
import io.faultwright.model.Session.Phase;
import io.faultwright.model.Session.WorkedExample;
import io.faultwright.model.Value;
import io.faultwright.prose.Html;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;

/**
 * What the pages of a session are made from.
 *
 * @param kb in the language in which they are written
 * @param session what is taught
 * @param draft whether its rules still have errors
 * @param pictures of the knowledge base, by their path in the {@code guides} folder
 * @param charts of each symptom, by its id; those for the equipment that is taught
 * @param examples in the order of the session
 */
public record LessonSource(
    KnowledgeBase kb,
    Session session,
    boolean draft,
    SortedMap<String, byte[]> pictures,
    SortedMap<String, List<Drawn>> charts,
    List<Example> examples) {
  public LessonSource {
    pictures = Collections.unmodifiableSortedMap(new TreeMap<>(pictures));
    charts = Collections.unmodifiableSortedMap(new TreeMap<>(charts));
    examples = List.copyOf(examples);
  }

  /**
   * A page of a chart.
   *
   * @param scope the equipment it is for; empty where it is everything
   * @param number of the page in its chart, from 1
   * @param count of pages that the chart has
   * @param sheet the page as it is printed
   * @param part what of it is looked at, large enough to be projected
   */
  public record Drawn(String scope, int number, int count, Html sheet, Html part) {}

  /**
   * A worked example.
   *
   * @param told how it is told
   * @param recorded the case
   * @param builds the machines that it can be
   * @param moments after each of its steps
   */
  public record Example(
      WorkedExample told, Case recorded, List<Build> builds, List<Moment> moments) {
    public Example {
      builds = List.copyOf(builds);
      moments = List.copyOf(moments);
    }
  }

  /**
   * What is known after a step.
   *
   * @param phase the step
   * @param taken what was read in it, in that order, then what follows from it by computation
   * @param answers what the rules tell by then; empty: nothing yet
   * @param possible ids of faults that are still possible
   * @param ruledOut ids of faults that are not
   * @param way the page of the chart to which the way has come; absent without a chart
   */
  public record Moment(
      Phase phase,
      List<Taken> taken,
      SortedSet<Answer> answers,
      SortedSet<String> possible,
      SortedSet<String> ruledOut,
      Optional<Drawn> way) {
    public Moment {
      taken = List.copyOf(taken);
    }
  }

  /**
   * A reading that was taken.
   *
   * @param reading its id
   * @param value what it says
   * @param computed whether it follows from others
   * @param band its limits then; absent where there are none, or not known yet
   * @param beside values of what its limits follow and of what it is computed from, as far as they
   *     are known
   */
  public record Taken(
      String reading,
      Value value,
      boolean computed,
      Optional<Band> band,
      SortedMap<String, Value> beside) {}
}
