package io.faultwright.run;

import io.faultwright.model.Build;
import io.faultwright.model.Value;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** Something a trace says besides its answers. */
public sealed interface Note {
  /** The situation gives a reading that the knowledge base does not have. */
  record NoSuchReading(String reading) implements Note {}

  /** The situation gives an equipment fact that the knowledge base does not have. */
  record NoSuchFact(String fact) implements Note {}

  /** The situation gives a value that the reading cannot have. */
  record NotPossible(String reading, Value value) implements Note {}

  /**
   * A combination was given that cannot happen.
   *
   * @param never id of the statement
   * @param anywhere whether it is a statement for every symptom
   * @param because why it cannot happen
   * @param tests the readings to take again
   */
  record NeverViolated(String never, boolean anywhere, String because, List<TestTrace> tests)
      implements Note {
    public NeverViolated {
      tests = List.copyOf(tests);
    }
  }

  /** The readings that define the complaint say otherwise. */
  record NotRecognised(List<TestTrace> failed) implements Note {
    public NotRecognised {
      failed = List.copyOf(failed);
    }
  }

  /**
   * Something must be right first and is not, or is not known yet.
   *
   * @param position its position in the written order, from 0
   * @param otherwise symptom to work where it is not right
   * @param tests those that fail or are open
   */
  record First(int position, String otherwise, List<TestTrace> tests) implements Note {
    public First {
      tests = List.copyOf(tests);
    }
  }

  /**
   * A test against limits is left open, because their table has no row for the machine.
   *
   * @param reading that is judged
   * @param builds without a row, of those the machine can be
   * @param at values of the readings that the table follows; empty unless all are known
   */
  record LimitsMissing(String reading, List<Build> builds, List<BigFraction> at) implements Note {
    public LimitsMissing {
      builds = List.copyOf(builds);
      at = List.copyOf(at);
    }
  }
}
