/** Data as JSON that may also stand in a script or a page. */
package io.faultwright.json;
