package io.faultwright.grading;

/** What makes an item doubtful. */
public enum Flag {
  /** Those who got the rest right tended to get it wrong: its correlation with them is negative. */
  AGAINST_THE_REST,
  /** Of the best, more chose one wrong option than the right one. */
  WRONG_OPTION_OF_THE_BEST,
  /** It tells nothing, since everybody got it right. */
  EVERYBODY_RIGHT,
  /** It tells nothing, since nobody got it right. */
  NOBODY_RIGHT
}
