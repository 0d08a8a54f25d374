/** The list of lessons. */
import { store } from '../../state/store.ts';
import { Dialog } from '../../kit/dialog/dialog.tsx';
import { LESSONS } from './lessons/index.ts';
import { beginLesson } from './player.ts';
import { textOf } from '../../speech/en/pages/lesson-texts.ts';
import { LESSON_WORDS } from '../../speech/en/pages/lessons.ts';
import './lessons.css';

export function LessonsDialog() {
  return (
    <Dialog title={LESSON_WORDS.title} onClose={store.getState().closeDialog}>
      <p>{LESSON_WORDS.intro}</p>
      <ol className="lesson-list">
        {LESSONS.map(({ id, minutes }) => {
          const { title, about } = textOf(id);
          return (
            <li key={id}>
              <div>
                <h3>{title}</h3>
                <p>
                  {about} <span className="quiet">{LESSON_WORDS.minutes(minutes)}</span>
                </p>
              </div>
              <button type="button" aria-label={LESSON_WORDS.beginName(title)} onClick={() => beginLesson(id)}>
                {LESSON_WORDS.begin}
              </button>
            </li>
          );
        })}
      </ol>
    </Dialog>
  );
}
