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

  vitalwright check --findings [PATH...] [--json]
      says what a protocol does not tell by itself, exactly and with
      sets that show it: rules never met, levels never reached,
      thresholds that change nothing, cliffs, and more; ends with 1
      when the file does not say that one is meant so

  vitalwright prove [PROTOCOL...] [--json]
      answers each safety requirement that is stated under must_always:
      proven, refuted with the plainest example, or not settled;
      without a name, of everything below protocols/

  vitalwright read PROTOCOL [--set JSON] [--json | --handoff]
      reads one set or series with a protocol; without --set it is
      taken from standard input; --handoff writes it as a handoff,
      with blanks for what only a person knows; --in-force reads
      with the edition of a ward policy that is in force, now or
      --at a time

  vitalwright compare OLD NEW [--json] [--html FILE]
      says exactly which sets get another level or other rules, of two
      protocols, ward policies or sealed editions; ends with 1 when
      some do, or when that is not settled; --html writes a report

  vitalwright seal PROTOCOL [--author NAME]...
      writes the edition that its file states, never to be edited,
      when everything that it must hold holds

  vitalwright approvers POLICY --agreed-by NAME... --minute REF
      [--on DAY] [--key FILE]...
      enters in the record who may approve, from approvers.yaml

  vitalwright approve PROTOCOL@N --as NAME --role ROLE --minute REF
      [--on DAY] [--key FILE]
      one person approves one sealed edition

  vitalwright put-in-force POLICY@N --by NAME --because TEXT
      [--from TIME] [--key FILE]
      an approved edition of a ward policy is read with from then on

  vitalwright withdraw POLICY --by NAME --because TEXT
      --instead TEXT [--from TIME] [--key FILE]
      nothing is in force from then on; one person, at once

  vitalwright key new FILE
      a key to sign with; FILE stands outside every repository

  vitalwright serve [FOLDER] [--port N]
      opens the rooms in the browser, on this machine only, with the
      protocols below FOLDER (default: protocols/)

  vitalwright build PROTOCOL --to json-logic|smt-lib|typescript
      [--out FILE]
      writes the protocol as a program for other systems: JSON Logic,
      SMT-LIB for solvers, or a TypeScript module without dependencies;
      without --out it goes to standard output

  vitalwright build PROTOCOL --to smt-lib --ask QUESTION
      [--sets complete|partial|any] [--limits as_written|within_bounds]
      [--where NAME=WHAT]... [--out FILE]
      writes a question over all such sets: rule:NAME, level:NAME,
      together:NAME,NAME and others (schema/reference/smt_lib.md)

  vitalwright build [FOLDER] --to site --out NEW
      writes the rooms as files for any web server, with the protocols
      below FOLDER (default: protocols/) and what was worked out about
      them; nothing can be saved or decided there

  vitalwright handbook PROTOCOL [--out FILE]
      writes the policy document as one page of HTML that prints well:
      every rule as a sentence that was read back to what runs, the
      ladder, numbers, limits, maps, cases, and a paper sheet

  vitalwright new NAME
      writes a first protocol with its cases, ready to be changed

  vitalwright --help, vitalwright --version

PROTOCOL is a file, its folder, or its name below protocols/;
NAME@N is its sealed edition N.
Exit: 0 all is well; 1 something that was checked does not hold;
2 it could not be asked.

Supports licensed judgement and local policy. Not a medical device.
`;
