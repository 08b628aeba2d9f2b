'use client';

import { useMemo, useState } from 'react';
import { ComboBox } from 'react-aria-components/ComboBox';
import { Input } from 'react-aria-components/Input';
import { Label } from 'react-aria-components/Label';
import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import { Popover } from 'react-aria-components/Popover';
import { PICKER } from '@/lib/format/words/price-changes';
import field from '../field.module.css';
import { foundChoices, type PriceChoice } from './found-choices';
import styles from './price-picker.module.css';

/** A field in which a price is looked for by name: what is bought, groups of it, suppliers, and what is sold. */
export function PricePicker({
  label,
  choices,
  chosen,
  onChoose,
}: {
  label: string;
  /** Null while they are being read. */
  choices: readonly PriceChoice[] | null;
  /** The name that stands in the field. */
  chosen: string;
  onChoose: (choice: PriceChoice) => void;
}) {
  const [typed, setTyped] = useState<string | null>(null);
  const found = useMemo(() => foundChoices(choices ?? [], typed ?? ''), [choices, typed]);
  return (
    <ComboBox
      className={`${field.field} ${styles.picker}`}
      items={found}
      inputValue={typed ?? chosen}
      onInputChange={(text) => setTyped(text === chosen ? null : text)}
      onOpenChange={(isOpen) => {
        if (!isOpen) setTyped(null);
      }}
      onSelectionChange={(key) => {
        const choice = choices?.find((each) => each.key === key);
        setTyped(null);
        if (choice) onChoose(choice);
      }}
      selectedKey={null}
      menuTrigger="focus"
      allowsEmptyCollection
    >
      <Label>{label}</Label>
      <span className={field.box}>
        <Input className={styles.input ?? ''} spellCheck={false} onFocus={(event) => event.currentTarget.select()} />
      </span>
      <Popover className={styles.list ?? ''} offset={10} crossOffset={-11}>
        <ListBox<PriceChoice>
          className={styles.options ?? ''}
          renderEmptyState={() => (
            <p className={styles.none}>{choices === null ? PICKER.reading : PICKER.nothing(typed ?? '')}</p>
          )}
        >
          {(choice) => (
            <ListBoxItem id={choice.key} textValue={choice.name} className={styles.option ?? ''}>
              {choice.name} <span className={styles.kind}>{choice.what}</span>
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </ComboBox>
  );
}
