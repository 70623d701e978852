/** Files to be published, made again only where what they are made from has changed. */
package io.faultwright.piece;
