package io.faultwright.quiz;

import io.faultwright.model.Answer;
import io.faultwright.model.Condition;
import io.faultwright.model.Condition.Side;
import java.util.List;
import java.util.Optional;

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
    <T> T read(Reader<T> reader);
  }

  /**
   * Makes something of each kind of content.
   *
   * @param <T> what it makes
   */
  public interface Reader<T> {
    T outcome(Outcome outcome);

    T goOn(GoOn goOn);

    T take(Take take);

    T onSide(OnSide onSide);

    T holds(Holds holds);

    T inOrder(InOrder inOrder);

    T said(Said said);
  }

  /** What the rules tell. */
  public record Outcome(Answer answer) implements Content {
    @Override
    public <T> T read(Reader<T> reader) {
      return reader.outcome(this);
    }
  }

  /** Going on with the chart. */
  public record GoOn() implements Content {
    @Override
    public <T> T read(Reader<T> reader) {
      return reader.goOn(this);
    }
  }

  /** A reading, by its id. */
  public record Take(String reading) implements Content {
    @Override
    public <T> T read(Reader<T> reader) {
      return reader.take(this);
    }
  }

  /** Below, within or above limits. */
  public record OnSide(Side side) implements Content {
    @Override
    public <T> T read(Reader<T> reader) {
      return reader.onSide(this);
    }
  }

  /** Something that holds. */
  public record Holds(Condition condition) implements Content {
    @Override
    public <T> T read(Reader<T> reader) {
      return reader.holds(this);
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
    public <T> T read(Reader<T> reader) {
      return reader.inOrder(this);
    }
  }

  /** A text of the trainer's. */
  public record Said(String text) implements Content {
    @Override
    public <T> T read(Reader<T> reader) {
      return reader.said(this);
    }
  }
}
