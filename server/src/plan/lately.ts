/** Keeps the last few answers of a function of plain data, so that what an edit did not touch is not worked out again. Bounded; forgets the oldest. */
export function lately<I, O>(most: number, work: (input: I) => O): (input: I) => O {
  const answers = new Map<string, O>();
  return (input) => {
    const key = JSON.stringify(input);
    const known = answers.get(key);
    if (known !== undefined) {
      // The most recent stand last.
      answers.delete(key);
      answers.set(key, known);
      return known;
    }
    const answer = work(input);
    answers.set(key, answer);
    if (answers.size > most) answers.delete(answers.keys().next().value!);
    return answer;
  };
}
