/**
 * What a reviewer is shown of rules, as values: where they answer, by what they are shown, when
 * they changed.
 */
package io.faultwright.review;
