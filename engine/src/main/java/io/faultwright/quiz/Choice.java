package io.faultwright.quiz;

import io.faultwright.model.Answer;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Something that can be chosen.
 *
 * @param content what it says
 * @param right whether it is the right one; of an item exactly one is
 * @param near why it is nearly right; absent for the right one and for those that are far off
 */
public record Choice(Content content, boolean right, Optional<NearMiss> near) {
  /** The right choice. */
  public static Choice right(Content content) {
    return new Choice(content, true, Optional.empty());
  }

  /** A wrong one that is nearly right. */
  public static Choice near(Content content, NearMiss why) {
    return new Choice(content, false, Optional.of(why));
  }

  /** A wrong one. */
  public static Choice wrong(Content content) {
    return new Choice(content, false, Optional.empty());
  }

  /** What a choice says. */
  public sealed interface Content {
    /** Dispatches on the kind of content. */
    <T> T match(
        Function<Outcome, T> outcome,
        Supplier<T> goOn,
        Function<Take, T> take,
        Function<OnSide, T> side,
        Function<Holds, T> holds,
        Function<InOrder, T> order,
        Function<Said, T> said);
  }

  /** What the rules tell. */
  public record Outcome(Answer answer) implements Content {
    @Override
    public <T> T match(
        Function<Outcome, T> outcome,
        Supplier<T> goOn,
        Function<Take, T> take,
        Function<OnSide, T> side,
        Function<Holds, T> holds,
        Function<InOrder, T> order,
        Function<Said, T> said) {
      return outcome.apply(this);
    }
  }

  /** Going on with the chart. */
  public record GoOn() implements Content {
    @Override
    public <T> T match(
        Function<Outcome, T> outcome,
        Supplier<T> goOn,
        Function<Take, T> take,
        Function<OnSide, T> side,
        Function<Holds, T> holds,
        Function<InOrder, T> order,
        Function<Said, T> said) {
      return goOn.get();
    }
  }

  /** A reading, by its id. */
  public record Take(String reading) implements Content {
    @Override
    public <T> T match(
        Function<Outcome, T> outcome,
        Supplier<T> goOn,
        Function<Take, T> take,
        Function<OnSide, T> side,
        Function<Holds, T> holds,
        Function<InOrder, T> order,
        Function<Said, T> said) {
      return take.apply(this);
    }
  }

  /** Below, within or above limits. */
  public record OnSide(Side side) implements Content {
    @Override
    public <T> T match(
        Function<Outcome, T> outcome,
        Supplier<T> goOn,
        Function<Take, T> take,
        Function<OnSide, T> onSide,
        Function<Holds, T> holds,
        Function<InOrder, T> order,
        Function<Said, T> said) {
      return onSide.apply(this);
    }
  }

  /** Something that holds. */
  public record Holds(Condition condition) implements Content {
    @Override
    public <T> T match(
        Function<Outcome, T> outcome,
        Supplier<T> goOn,
        Function<Take, T> take,
        Function<OnSide, T> side,
        Function<Holds, T> holds,
        Function<InOrder, T> order,
        Function<Said, T> said) {
      return holds.apply(this);
    }
  }

  /**
   * The steps of the stem in some order.
   *
   * @param steps their positions in the stem, counted from 0
   */
  public record InOrder(List<Integer> steps) implements Content {
    public InOrder {
      steps = List.copyOf(steps);
    }

    @Override
    public <T> T match(
        Function<Outcome, T> outcome,
        Supplier<T> goOn,
        Function<Take, T> take,
        Function<OnSide, T> side,
        Function<Holds, T> holds,
        Function<InOrder, T> order,
        Function<Said, T> said) {
      return order.apply(this);
    }
  }

  /** A text of the trainer's. */
  public record Said(String text) implements Content {
    @Override
    public <T> T match(
        Function<Outcome, T> outcome,
        Supplier<T> goOn,
        Function<Take, T> take,
        Function<OnSide, T> side,
        Function<Holds, T> holds,
        Function<InOrder, T> order,
        Function<Said, T> said) {
      return said.apply(this);
    }
  }
}
