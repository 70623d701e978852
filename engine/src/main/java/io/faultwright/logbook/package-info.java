/** What a controller's log says, and where it and a sequence of operation part. */
package io.faultwright.logbook;
