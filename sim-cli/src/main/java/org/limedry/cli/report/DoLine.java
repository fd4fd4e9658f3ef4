package org.limedry.cli.report;

/**
 * One thing to do.
 *
 * @param what verb, thing and time, without a full stop
 * @param why what in the run asks for it, to follow a colon
 */
record DoLine(String what, String why) {}
