/** The one typeface of charts, handbook and site, and its metrics. */
package io.faultwright.font;
