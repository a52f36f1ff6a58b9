/** @jsxRuntime automatic @jsxImportSource preact */
import { Table } from "../html/Table.tsx";
import { BLANK, type StageView, type WorksheetView } from "./worksheetView.ts";

const Fill = () => <span class="fill" />;
/** A cell to write in is a line, whatever the table. */
const cell = (_column: string, text: string) => (text === BLANK ? <Fill /> : text);

function Cautions({ cautions }: { cautions: StageView["cautions"] }) {
  if (cautions.length === 0) return null;
  return (
    <ul class="warn">
      {cautions.map(({ title, text }) => (
        <li key={title}>
          <strong>{title}</strong> {text}
        </li>
      ))}
    </ul>
  );
}

function StageSheet({ stage }: { stage: StageView }) {
  return (
    <section class="stage-sheet">
      <h2>{stage.title}</h2>
      <Cautions cautions={stage.cautions} />
      {stage.lead === "" ? null : <p>{stage.lead}</p>}
      {stage.parts.rows.length === 0 ? null : <h3>Parts, cold and discharged</h3>}
      {stage.parts.rows.length === 0 ? null : <Table table={stage.parts} caption={`Parts of ${stage.title}`} empty="" cell={cell} />}
      <p>
        <small>{stage.methods.join(". ")}</small>
      </p>
      {stage.readings.map(({ title, table }) => (
        <div key={title}>
          <h3>{title}</h3>
          <Table table={table} caption={`${title}, ${stage.title}`} empty="" cell={cell} />
        </div>
      ))}
    </section>
  );
}

/** Body of a bench sheet: what to heed, in which order to work, then stage by stage with room to write. */
export function WorksheetPage({ view }: { view: WorksheetView }) {
  return (
    <div class="bench">
      <header>
        <p class="kicker">Bench sheet</p>
        <h1>{view.title}</h1>
        <div class="facts">
          {view.facts.map(([label, text]) => (
            <div key={label}>
              <small>{label}</small> {text === BLANK ? <Fill /> : <span>{text}</span>}
            </div>
          ))}
        </div>
      </header>
      <main>
        <section>
          <h2>Cautions</h2>
          <Cautions cautions={view.cautions} />
        </section>
        <section>
          <h2>Order of work</h2>
          <ol>
            {view.order.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
          <p>{view.notes}</p>
        </section>
        {view.stages.map((stage) => (
          <StageSheet stage={stage} key={stage.id} />
        ))}
      </main>
    </div>
  );
}
