/** What `vitalwright --help` prints. */
export const usage = `vitalwright: protocols for reading vital signs, written by the unit that uses them

  vitalwright check [PATH...] [--json] [--junit FILE] [--show STAGE]
      checks every protocol, ladder, ward and case file below PATH
      (default: protocols/); --show document, logic or bounds prints
      a stage of the way, for people who look for a fault

  vitalwright check --unguarded [PATH...] [--json]
      makes each small change (numbers, comparisons, clauses,
      exceptions, levels, points); ends with 1 when no case notices
      one and no reason is given; prints a case that would, and, as
      no failure, which rules and edges the cases do not show

  vitalwright read PROTOCOL [--set JSON] [--json | --handoff]
      reads one set or series with a protocol; without --set it is
      taken from standard input; --handoff writes it as a handoff,
      with blanks for what only a person knows

  vitalwright serve [FOLDER] [--port N]
      opens the rooms in the browser, on this machine only, with the
      protocols below FOLDER (default: protocols/)

  vitalwright build PROTOCOL --to json-logic|typescript [--out FILE]
      writes the protocol as a program for other systems: JSON Logic, or
      a TypeScript module without dependencies; without --out it goes
      to standard output

  vitalwright new NAME
      writes a first protocol with its cases, ready to be changed

  vitalwright --help, vitalwright --version

PROTOCOL is a file, its folder, or its name below protocols/.
Exit: 0 all is well; 1 something that was checked does not hold;
2 it could not be asked.

Supports licensed judgement and local policy. Not a medical device.
`;
