/**
 * A program that saves into a file over and over, for a test that kills it: `save-and-die FILE STEP`. Each text is longer than what a
 * disk takes at once, and says at both ends which one it is. At the step that is named the program kills itself; at none it goes on until
 * somebody else does, and says when it began.
 */
import { readFileSync } from 'node:fs';
import type { FileHandle } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { compareAndSwap, digestOf } from '../../src/command-line/saving/compare-and-swap.ts';
import { realDisk, type Disk } from '../../src/command-line/saving/write-whole.ts';

export const steps = ['opened', 'half', 'written', 'renaming', 'renamed', 'linking', 'linked'] as const;
type Step = (typeof steps)[number];

/** The text of one save: whole only when both ends say the same, and all between is there. */
export const textOf = (number: number): string =>
  `${number}\n${'a line of a protocol\n'.repeat(15_000)}${number}\n`;

const die = (): never => {
  process.kill(process.pid, 'SIGKILL');
  throw new Error('still alive');
};

/** A disk on which the program ends at one step. */
function diskThatEnds(at: Step | undefined): Disk {
  const end = (step: Step): void => void (step === at && die());
  return {
    open: async (file, flags, mode) => {
      const handle = await realDisk.open(file, flags, mode);
      if (flags !== 'wx') return handle;
      end('opened');
      const whole = handle.writeFile.bind(handle);
      const writeFile: FileHandle['writeFile'] = async (bytes) => {
        if (at === 'half') await handle.write((bytes as Buffer).subarray(0, 100_000));
        end('half');
        await whole(bytes);
        end('written');
      };
      return Object.assign(handle, { writeFile });
    },
    rename: async (from, to) => {
      end('renaming');
      await realDisk.rename(from, to);
      end('renamed');
    },
    link: async (from, to) => {
      end('linking');
      await realDisk.link(from, to);
      end('linked');
    },
  };
}

async function saveForEver(file: string, step: string | undefined): Promise<void> {
  const disk = diskThatEnds(steps.find((each) => each === step));
  process.stdout.write('began\n');
  for (let number = 1; ; number += 1) {
    const there = step?.startsWith('link') ? null : digestOf(readFileSync(file));
    await compareAndSwap({ file, toMake: [] }, textOf(number), there, disk);
  }
}

const [, program, file, step] = process.argv;
if (program === fileURLToPath(import.meta.url) && file !== undefined) await saveForEver(file, step);
