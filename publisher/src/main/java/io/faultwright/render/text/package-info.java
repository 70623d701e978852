/** Pages as plain text for a mail. */
package io.faultwright.render.text;
