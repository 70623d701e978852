/** Where the rules of a symptom answer, alone and together, for a reviewer. */
package io.faultwright.analysis.review;
