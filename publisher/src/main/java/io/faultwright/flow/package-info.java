/** From rules to a flowchart: what is asked, in which order, and where it ends; no coordinates. */
package io.faultwright.flow;
