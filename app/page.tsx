import { redirect } from 'next/navigation';
import { connection } from 'next/server';

/** The first page is the menu of the latest month with sales. */
export default async function First() {
  await connection();
  redirect('/menu');
}
