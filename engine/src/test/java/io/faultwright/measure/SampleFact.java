package io.faultwright.measure;

import io.faultwright.measure.GeneratedRules.Sample;
import java.util.List;

/** A sample as a bean, for rules in DRL text, and how many rules fired on it. */
public final class SampleFact {
  private final List<String> choices;
  private final List<Integer> quantities;
  private int fired;

  public SampleFact(Sample sample) {
    this.choices = sample.choices();
    this.quantities = sample.quantities();
  }

  String choice(int column) {
    return choices.get(column);
  }

  int quantity(int column) {
    return quantities.get(column);
  }

  public void fire() {
    fired++;
  }

  int fired() {
    return fired;
  }

  public String getC0() {
    return choice(0);
  }

  public String getC1() {
    return choice(1);
  }

  public String getC2() {
    return choice(2);
  }

  public String getC3() {
    return choice(3);
  }

  public String getC4() {
    return choice(4);
  }

  public String getC5() {
    return choice(5);
  }

  public String getC6() {
    return choice(6);
  }

  public String getC7() {
    return choice(7);
  }

  public int getQ0() {
    return quantity(0);
  }

  public int getQ1() {
    return quantity(1);
  }

  public int getQ2() {
    return quantity(2);
  }

  public int getQ3() {
    return quantity(3);
  }
}
