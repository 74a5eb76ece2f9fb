/** Questions for the players of a room, and what is right: marked by the engine, not by hand. Pure. */
export { choices, isRight, rightAnswers, sameSpotted } from './answers.ts';
export { makeQuiz, type QuizPlan } from './makeQuiz.ts';
export type { Asked, Question, Spotted } from './types.ts';
