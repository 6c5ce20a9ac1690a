/** The command line: the only place that wires, prints and exits. */
package gelfront.cli;
