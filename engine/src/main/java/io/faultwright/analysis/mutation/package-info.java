/** Small mistakes put into the rules, and whether the recorded cases notice them. */
package io.faultwright.analysis.mutation;
