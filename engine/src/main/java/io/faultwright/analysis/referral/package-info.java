/** Referrals that lead back to where they began. */
package io.faultwright.analysis.referral;
