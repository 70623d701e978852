package io.faultwright.guided;

import io.faultwright.flow.Course;
import io.faultwright.json.Fields;
import io.faultwright.json.Json;
import io.faultwright.model.Answer;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import io.faultwright.model.Condition.Test;
import io.faultwright.model.Value;
import io.faultwright.quantity.Interval;
import io.faultwright.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Conditions, values and answers as lists that begin with what they are. */
final class Conditions {
  private final Wording wording;
  private final BuildNumbers builds;

  Conditions(Wording wording, BuildNumbers builds) {
    this.wording = wording;
    this.builds = builds;
  }

  List<Object> of(Condition condition) {
    return condition.match(
        all -> List.of("all", all.parts().stream().map(this::of).toList()),
        any -> List.of("any", any.parts().stream().map(this::of).toList()),
        not -> List.of("not", of(not.part())),
        this::of);
  }

  private List<Object> of(Test test) {
    String words = wording.pattern(test.subject(), test.pattern());
    return test.pattern()
        .match(
            oneOf -> List.of("is", test.subject(), List.copyOf(oneOf.values()), words),
            within -> List.of("in", test.subject(), interval(within.interval()), words),
            against -> List.of("limits", test.subject(), letters(against), words),
            untaken -> List.of("untaken", test.subject(), words));
  }

  private static String letters(Condition.AgainstLimits against) {
    return against.sides().stream().map(Conditions::letter).collect(Collectors.joining());
  }

  private static String letter(Side side) {
    return side.name().substring(0, 1);
  }

  /** Low, whether it belongs to it, high, whether it does. */
  static List<Object> interval(Interval interval) {
    List<Object> ends = new ArrayList<>();
    ends.add(interval.low().<Object>map(end -> Rationals.text(end.value())).orElse(Json.NULL));
    ends.add(interval.low().map(Interval.End::included).orElse(false));
    ends.add(interval.high().<Object>map(end -> Rationals.text(end.value())).orElse(Json.NULL));
    ends.add(interval.high().map(Interval.End::included).orElse(false));
    return ends;
  }

  List<Object> of(Course.Arm arm) {
    List<List<Object>> picks = arm.picks().stream().map(this::of).toList();
    return List.of(picks.size() == 1 ? picks.get(0) : List.of("any", picks), arm.next());
  }

  private List<Object> of(Course.Pick pick) {
    if (pick instanceof Course.Meets meets) {
      return of(meets.condition());
    }
    if (pick instanceof Course.IsOneOf one) {
      return List.of("builds", builds.of(one.builds()));
    }
    return pick instanceof Course.IsAbsent absent
        ? List.of("absent", absent.reading(), absent.limits())
        : List.of("nofigure", ((Course.HasNoFigure) pick).reading());
  }

  static Fields of(Value value) {
    Fields fields = new Fields();
    return value.match(
        word -> fields.put("word", word.id()),
        number -> fields.put("number", Rationals.text(number.amount())),
        () -> fields.put("untaken", true));
  }

  static List<Object> of(Answer answer) {
    String kind =
        answer instanceof Answer.OfFault
            ? "fault"
            : answer instanceof Answer.OfReferral ? "refer" : "escalate";
    return List.of(kind, answer.name());
  }
}
