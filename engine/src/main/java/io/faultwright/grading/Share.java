package io.faultwright.grading;

/**
 * So many right out of so many.
 *
 * @param right how many are right
 * @param of how many there are, at least 1
 */
public record Share(int right, int of) {
  /** As a share of 1. */
  public double share() {
    return (double) right / of;
  }

  /** Whether it is at least a number of hundredths; exact. */
  public boolean reaches(int percent) {
    return 100 * right >= percent * of;
  }

  Share and(boolean isRight) {
    return new Share(right + (isRight ? 1 : 0), of + 1);
  }
}
