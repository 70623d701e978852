/** The whole flow: sources to a knowledge base, to findings that Drools confirmed, to a report. */
package io.faultwright.pipeline;
